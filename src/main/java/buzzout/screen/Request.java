package buzzout.screen;

/** What the person asks of the session, rather than of the screen. Keys are indices into the plan's keys. */
public sealed interface Request {
    /** The key was pressed and nothing came. */
    record NothingCame(int key) implements Request {}

    /** Every key has been pressed. */
    record AllPressed() implements Request {}

    /** From here on every key is pressed once, in reading order. */
    record BeginReadThrough() implements Request {}

    /** The last key of the read-through has had its turn. */
    record EndReadThrough() implements Request {}

    /** The last press, or the last word about one, was a slip. */
    record TakeBack() implements Request {}

    /** Press this key of the simulated board. */
    record Press(int key) implements Request {}
}
