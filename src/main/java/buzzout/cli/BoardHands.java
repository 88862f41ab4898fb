package buzzout.cli;

import java.util.List;
import java.util.Set;

/** What the person can ask to be done to a board that only exists here. */
interface BoardHands {
    /** A board on a probe is in the person's own hands. */
    BoardHands NONE = new BoardHands() {
        @Override
        public void press(int key, LiveBench bench) {
            // The person presses.
        }

        @Override
        public void repair(List<String> codes, LiveBench bench) {
            // The person solders.
        }

        @Override
        public void holdOrLetGo(int key) {}

        @Override
        public void holdTogether(Set<Integer> keys) {}

        @Override
        public void letGo() {}
    };

    /** For a moment. */
    void press(int key, LiveBench bench);

    /** Until the same is asked again. */
    void holdOrLetGo(int key);

    /** All of them, long enough to stand, then none. */
    void holdTogether(Set<Integer> keys);

    /** No key is held any more. */
    void letGo();

    /** Unplugs the board once the bench waits for that, mends what has one of these fault codes, and plugs it in again. */
    void repair(List<String> codes, LiveBench bench);
}
