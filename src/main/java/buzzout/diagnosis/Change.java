package buzzout.diagnosis;

import java.util.BitSet;

/** How cost and debt change from one forecast to the next; used again and again. */
final class Change {
    private final BitSet touched = new BitSet();
    private double[] before = new double[64];
    private double cost;
    private double owed;

    void clear() {
        touched.clear();
        cost = 0;
        owed = 0;
    }

    /** Costs include doubt, which nobody owes an explanation for. */
    void add(double tolerated, double costBefore, double doubtBefore, double costAfter, double doubtAfter) {
        cost += costAfter - costBefore;
        owed += Tolerance.owed(tolerated, costAfter - doubtAfter) - Tolerance.owed(tolerated, costBefore - doubtBefore);
    }

    BitSet touched() {
        return touched;
    }

    void before(int answer, double answerCost) {
        if (answer >= before.length) {
            before = java.util.Arrays.copyOf(before, 2 * answer + 1);
        }
        before[answer] = answerCost;
    }

    double before(int answer) {
        return before[answer];
    }

    double cost() {
        return cost;
    }

    double owed() {
        return owed;
    }
}
