package buzzout.session;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Plan;

/** Pins that read low whatever is driven; their pairs say nothing about keys. */
final class StuckPins {
    private StuckPins() {}

    static Pairs without(Plan plan, Pairs quiet) {
        int pins = plan.pins().size();
        long stuck = -1L >>> (Long.SIZE - pins);
        for (int low = 0; low < pins; low++) {
            stuck &= quiet.readsLow(low) | 1L << low;
        }
        long pinsStuck = stuck;
        return Pairs.of(
                quiet.list().stream().filter(pair -> !isIn(pinsStuck, pair)).toList());
    }

    private static boolean isIn(long pins, Pair pair) {
        return (pins >>> pair.reads() & 1) != 0;
    }
}
