package buzzout.session;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;

/**
 * How probable what comes at a key's turn in a read-through is, when only some faults of the board are known; judgement
 * throughout, as logarithms.
 *
 * <p>Gaps and extra presses need no cheaper rate for the second in a row, as alignments of genes have: however keys and
 * presses are lined up, gaps less extra presses are keys less presses.
 */
final class ReadingSlips {
    /** One slip in 40 keys, of each of four kinds alike: left out, twice, exchanged with the next, a neighbour instead. */
    private static final double ONE_KIND = 1 / 160.0;

    /** No slip, and no fault that is not known. */
    private static final double AS_EXPECTED = Math.log(0.95);

    /** The key was left out, or is silent by a fault that is not known. */
    private static final double NOTHING = Math.log(ONE_KIND + 0.012);

    static final double EXCHANGED = Math.log(ONE_KIND);
    private static final double TWICE = Math.log(ONE_KIND);

    /** One certain other press in between, such as of a neighbour that was noticed and made good. */
    private static final double EXTRA = Math.log(2e-4);

    /** The key's own pair, or its reverse, with or without company: reversed, bypassed, bridged. */
    private static final double OWN_PAIR = Math.log(5e-3);

    /** One certain answer of a key on the same row or column: a neighbour instead, or wired to another net. */
    private static final double OWN_NET = Math.log(1.5e-3);

    private static final double ANYTHING = Math.log(1e-4);

    private ReadingSlips() {}

    static double answer(Reading expected, Pairs came) {
        if (isSilent(expected)) {
            return ANYTHING;
        } else if (expected.agreesWith(came)) {
            return AS_EXPECTED;
        }
        double best = ANYTHING;
        for (Pair own : expected.low().list()) {
            if (came.contains(own) || came.contains(own.turned())) {
                return OWN_PAIR;
            }
            for (Pair pair : came.list()) {
                best = isOnNetOf(own, pair) ? OWN_NET : best;
            }
        }
        return best;
    }

    private static boolean isOnNetOf(Pair own, Pair pair) {
        return own.low() == pair.low()
                || own.reads() == pair.reads()
                || own.low() == pair.reads()
                || own.reads() == pair.low();
    }

    static double nothing(Reading expected) {
        return isSilent(expected) ? AS_EXPECTED : NOTHING;
    }

    static double extra(boolean sameAsBefore) {
        return sameAsBefore ? TWICE : EXTRA;
    }

    private static boolean isSilent(Reading expected) {
        return expected.low().isEmpty() && expected.between().isEmpty();
    }
}
