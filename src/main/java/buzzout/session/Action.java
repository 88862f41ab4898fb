package buzzout.session;

import buzzout.plan.Joint;

/** What the person did or said at the bench. Keys are indices into the plan's keys. */
public sealed interface Action {
    /** The quiet check is over: what conducts now, conducts without a press. */
    record QuietCheckDone() implements Action {}

    /** The program named this key and waits for its press. */
    record Called(int key) implements Action {}

    /** The key was pressed and nothing came. */
    record NothingCame(int key) implements Action {}

    /** The program named this joint and waits for the flying lead to touch it. */
    record TouchCalled(Joint joint) implements Action {}

    /** The flying lead was held against this joint and met nothing. */
    record TouchedNothing(Joint joint) implements Action {}

    /** Every key has been pressed; those that never answered are silent. */
    record AllPressed() implements Action {}

    /** The last press or touch, or the last word about one, was a slip and does not count. */
    record TakenBack() implements Action {}

    /** The person repaired what has this fault code, unplugged; what it can have changed is untested again. */
    record Repaired(String code) implements Action {}

    record Noted(String text) implements Action {}

    record Ended() implements Action {}
}
