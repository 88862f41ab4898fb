package buzzout.diagnosis;

/** What a step costs the person, in presses of a key; judgement. */
final class Labour {
    static final double PRESS = 1;
    /** The board is turned over, the joint found, the lead held. */
    static final double TOUCH = 4;
    /** The board is unplugged and a meter's two tips are held. */
    static final double READING = 10;
    /** A joint is opened and made again, to tell apart what nothing else does. */
    static final double UNSOLDERING = 30;

    private Labour() {}
}
