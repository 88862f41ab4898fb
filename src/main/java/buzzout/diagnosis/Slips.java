package buzzout.diagnosis;

/** How often hands and probe err; judgement throughout, as logarithms of probabilities. */
final class Slips {
    /** A meant press lands on another key, or its answer is spoilt: 1 in 100, over some 50 other keys. */
    static final double OTHER_ANSWER = Math.log(2e-4);

    /** A meant press does not happen, or not far enough. */
    static final double NO_PRESS = Math.log(1e-3);

    /** A key held while the plate is flexed slips from under the finger. */
    static final double LET_GO = Math.log(1e-4);

    /** The flying lead meets another joint or none, or one of the keys held together is not down. */
    static final double TRIAL_SPOILT = Math.log(1e-3);

    /** A press of the person's own choice that no key of the board can give, such as two fingers at once. */
    static final double STRAY = Math.log(1e-5);

    /** In free play, an answer comes more often than there are keys to give it. */
    static final double REPEAT = Math.log(0.1);

    /** A key is left out although the person says that every key was pressed. */
    static final double LEFT_OUT = Math.log(2e-3);

    /** One pair of the quiet check is misread. */
    static final double MISREAD = Math.log(1e-5);

    /** A level between low and high is read as low, or as high. */
    static final double EITHER_WAY = Math.log(0.5);

    private Slips() {}
}
