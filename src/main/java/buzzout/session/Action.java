package buzzout.session;

import java.util.List;
import java.util.Set;

/** What the person did or said at the bench. Keys are indices into the plan's keys. */
public sealed interface Action {
    /** The quiet check is over: what conducts now, conducts without a press. */
    record QuietCheckDone() implements Action {}

    /** The program shall call one key after another; those not called yet, or all where every key was. */
    record RollCallBegun() implements Action {}

    /** The roll call is left; what was called is known. */
    record RollCallLeft() implements Action {}

    /** The program named this key: the next press is meant to be it. */
    record Called(int key) implements Action {}

    /** The key was pressed and nothing came. */
    record NothingCame(int key) implements Action {}

    /** Every key has been pressed; those that never answered are silent. */
    record AllPressed() implements Action {}

    /** The last press, or the last word, was a slip and does not count. */
    record TakenBack() implements Action {}

    /**
     * The person repairs what has this fault code. Once the board is plugged in again, or the same is said once more, what
     * the repair can have changed is untested and a new quiet check is due.
     *
     * @param orAlike codes of faults that it may have been instead, because the evidence could not tell them apart
     */
    record Repaired(String code, List<String> orAlike) implements Action {
        public Repaired {
            orAlike = List.copyOf(orAlike);
        }

        public Repaired(String code) {
            this(code, List.of());
        }
    }

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
