package buzzout.session;

/** What the person did or said at the bench. Keys are indices into the plan's keys. */
public sealed interface Action {
    /** The quiet check is over: what conducts now, conducts without a press. */
    record QuietCheckDone() implements Action {}

    /** The program named this key and waits for its press. */
    record Called(int key) implements Action {}

    /** The key was pressed and nothing came. */
    record NothingCame(int key) implements Action {}

    /** Every key has been pressed; those that never answered are silent. */
    record AllPressed() implements Action {}

    /** From here on every key is pressed once, in reading order. */
    record ReadThroughBegun() implements Action {}

    /** The last key of the read-through has had its turn. */
    record ReadThroughEnded() implements Action {}

    /** The last press, or the last word about one, was a slip and does not count. */
    record TakenBack() implements Action {}

    /** The person repaired what has this fault code, unplugged; what it can have changed is untested again. */
    record Repaired(String code) implements Action {}

    record Noted(String text) implements Action {}

    record Ended() implements Action {}
}
