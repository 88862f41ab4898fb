package buzzout.diagnosis;

/** How often hands and probe err; judgement throughout, as logarithms of probabilities. */
final class Slips {
    /** A meant press lands on another key, or its answer is spoilt: 1 in 100, over some 50 other keys. */
    static final double OTHER_ANSWER = Math.log(2e-4);

    /** A meant press does not happen, or not far enough. */
    static final double NO_PRESS = Math.log(1e-3);

    /** A press of the person's own choice that no key of the board can give, such as two fingers at once. */
    static final double STRAY = Math.log(1e-5);

    /** In free play, an answer comes more often than there are keys to give it. */
    static final double REPEAT = Math.log(0.1);

    /** A key is left out although the person says that every key was pressed. */
    static final double LEFT_OUT = Math.log(2e-3);

    /** The flying lead makes no contact with its joint, through flux or oxide: 1 in 100. */
    static final double NO_CONTACT = Math.log(1e-2);

    /** The flying lead is held against another joint, with another reading: 1 in 500. */
    static final double OTHER_JOINT = Math.log(2e-3);

    /** One pair of the quiet check is misread. */
    static final double MISREAD = Math.log(1e-5);

    /** A level between low and high is read as low, or as high. */
    static final double EITHER_WAY = Math.log(0.5);

    private Slips() {}
}
