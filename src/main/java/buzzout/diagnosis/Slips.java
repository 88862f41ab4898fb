package buzzout.diagnosis;

/** How often hands and probe err; judgement throughout, as probabilities. */
final class Slips {
    /** A meant press lands on another key. */
    static final double WRONG_KEY = 0.01;

    /** A meant press does not happen, or not far enough. */
    static final double NO_PRESS = 0.001;

    /** A press that no key of the board can give, such as two fingers at once. */
    static final double STRAY = 1e-5;

    /** In free play, the same answer comes more often than keys can give it. */
    static final double REPEAT = 0.1;

    /** A key is left out although the person says that every key was pressed. */
    static final double LEFT_OUT = 0.002;

    /** One pair of the quiet check is misread. */
    static final double MISREAD = 1e-5;

    /** The logarithm of the chance that a meant press is read as it should be, slips onto like keys left aside. */
    static final double LOG_RIGHT = Math.log(1 - WRONG_KEY - NO_PRESS - STRAY);

    private Slips() {}
}
