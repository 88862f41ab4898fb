package buzzout.session;

import buzzout.circuit.Pair;

/** Which closings belong to one press. */
public final class PressTiming {
    /**
     * One press closes all its pairs within this; two fingers rarely do. Judgement: about twice the 6.2 ms that J.
     * Ganssle measured as the longest ordinary bounce.
     */
    public static final long ONSET_MICROS = 12_000;

    /** A pair that comes back sooner than this only bounced. Judgement: four times the longest ordinary bounce. */
    static final long BOUNCE_MICROS = 25_000;

    private PressTiming() {}

    static boolean belongsTo(Press press, long micros, Pair pair, boolean keyDown) {
        if (press.pairs().isEmpty()) {
            return false;
        }
        boolean onset = micros - press.micros() <= ONSET_MICROS;
        boolean comesBack = press.pairs().contains(pair) && (keyDown || micros - press.lastMicros() <= BOUNCE_MICROS);
        return onset || comesBack;
    }
}
