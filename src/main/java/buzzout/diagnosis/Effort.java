package buzzout.diagnosis;

import java.util.function.BooleanSupplier;

/**
 * How long a weighing may look.
 *
 * @param forOne branches expanded to explain one term, at most
 * @param forAll branches expanded to explain several terms, or to find what could stand in for a fault, at most
 * @param thorough whether it looks in several ways and until nothing better turns up
 * @param isOverdue whether its time is over, asked once for each branch; a thorough look is given up then
 * @param isUrgent whether something more urgent turned up
 */
record Effort(int forOne, int forAll, boolean thorough, BooleanSupplier isOverdue, BooleanSupplier isUrgent) {
    private static final long HANDS_TIME_NANOS = 4_000_000;

    static Effort thorough(BooleanSupplier isOverdue) {
        return new Effort(25, 100, true, isOverdue, isOverdue);
    }

    /** Takes what was found when its time is over. */
    static Effort brief(BooleanSupplier isOver) {
        return new Effort(8, 8, false, isOver, isOver);
    }

    /** As short as a glance, and as urgent as this. */
    Effort inBrief() {
        return new Effort(8, 8, false, isOverdue, isUrgent);
    }

    /** The same, for so many branches and no more. */
    Effort within(Patience patience) {
        return new Effort(forOne, forAll, thorough, () -> patience.isSpent() || isOverdue.getAsBoolean(), isUrgent);
    }

    /** What a hand does not feel, even on a slow machine; from now on. */
    static BooleanSupplier handsTime() {
        long end = System.nanoTime() + HANDS_TIME_NANOS;
        return () -> System.nanoTime() - end > 0;
    }
}
