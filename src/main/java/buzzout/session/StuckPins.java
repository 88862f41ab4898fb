package buzzout.session;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Plan;
import java.util.OptionalInt;

/** Pins that read low whatever is driven; their pairs say nothing about keys. */
final class StuckPins {
    /** On fewer, a key's own faults may look so. */
    private static final int FEWEST_NETS = 4;

    private StuckPins() {}

    static Pairs without(Plan plan, Pairs quiet) {
        long pinsStuck = stuck(plan, quiet);
        return quiet.where(pair -> !isIn(pinsStuck, pair));
    }

    /**
     * The net that came to read low whatever was driven, and nothing else did: it met ground, for no key reaches that
     * far. While a pin is held low for good, its keys do.
     */
    static OptionalInt fallen(Plan plan, Pairs quiet, Pairs closed) {
        long fallen = stuck(plan, closed);
        return Long.bitCount(fallen) == 1
                        && closed.count() == plan.nets().size() - 1
                        && plan.nets().size() >= FEWEST_NETS
                        && stuck(plan, quiet) == 0
                ? OptionalInt.of(Long.numberOfTrailingZeros(fallen))
                : OptionalInt.empty();
    }

    /** The pins that read low whatever is driven, as a bit set; what the flying lead's pin reads is known elsewhere. */
    private static long stuck(Plan plan, Pairs pairs) {
        int nets = plan.nets().size();
        long stuck = -1L >>> (Long.SIZE - nets);
        for (int low = 0; low < nets; low++) {
            stuck &= pairs.readsLow(low) | 1L << low;
        }
        return stuck;
    }

    private static boolean isIn(long pins, Pair pair) {
        return (pins >>> pair.reads() & 1) != 0;
    }
}
