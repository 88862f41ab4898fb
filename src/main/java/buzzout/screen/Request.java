package buzzout.screen;

import java.util.List;

/** What the person asks of the session, rather than of the screen. Keys are indices into the plan's keys. */
public sealed interface Request {
    /** The key was pressed and nothing came. */
    record NothingCame(int key) implements Request {}

    /** Every key has been pressed. */
    record AllPressed() implements Request {}

    /** The last press, or the last word about one, was a slip. */
    record TakeBack() implements Request {}

    /** Call one key after another. */
    record BeginRollCall() implements Request {}

    record LeaveRollCall() implements Request {}

    /** What has this fault code, or one of the others, is repaired; said once more: the board is plugged in again. */
    record Repaired(String code, List<String> orAlike) implements Request {
        public Repaired {
            orAlike = List.copyOf(orAlike);
        }
    }

    /** Begin a flex check, or end the one that goes on. */
    record FlexCheck() implements Request {}

    /** Begin to hold all keys, some at once, or end it. */
    record AllAtOnce() implements Request {}

    /** Press this key of the simulated board; hold it, or let it go, while keys are being held. */
    record Press(int key) implements Request {}
}
