package buzzout.cli;

import java.util.List;

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
    };

    void press(int key, LiveBench bench);

    /** Unplugs the board once the bench waits for that, mends what has one of these fault codes, and plugs it in again. */
    void repair(List<String> codes, LiveBench bench);
}
