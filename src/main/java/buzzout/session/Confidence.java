package buzzout.session;

/**
 * What presses without a failure prove, with 95 % confidence: at a failure rate q, n presses pass without one with
 * probability (1 − q)^n, and q is bounded where that is 0.05. (Compare Hanley and Lippman-Hand,
 * JAMA 249:1743, 1983; from memory.)
 */
public final class Confidence {
    private static final double DOUBT = 0.05;

    private Confidence() {}

    /** The highest failure rate, 0 to 1, that so many presses without a failure leave possible; 1 for none. */
    public static double mostFailing(int presses) {
        return presses == 0 ? 1 : 1 - Math.pow(DOUBT, 1.0 / presses);
    }

    /** How many presses are needed to see at least one failure of a key that fails at this rate, between 0 and 1. */
    public static int pressesToSee(double rate) {
        return (int) Math.ceil(Math.log(DOUBT) / Math.log(1 - rate));
    }
}
