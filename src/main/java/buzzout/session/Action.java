package buzzout.session;

import java.util.List;
import java.util.Set;

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

    /** The last press, or the last word about one, was a slip and does not count. */
    record TakenBack() implements Action {}

    /** The person repaired what has this fault code, unplugged; what it can have changed is untested again. */
    record Repaired(String code) implements Action {}

    /** A flex check begins: keys are held while the plate is flexed, and count as no press. */
    record FlexBegun() implements Action {}

    record FlexOver() implements Action {}

    /** The program calls these combinations of keys, one after another, each to be held together; none ends it. */
    record CalledTogether(List<Set<Integer>> combinations) implements Action {
        public CalledTogether {
            combinations = combinations.stream().map(Set::copyOf).toList();
        }
    }

    record Noted(String text) implements Action {}

    record Ended() implements Action {}
}
