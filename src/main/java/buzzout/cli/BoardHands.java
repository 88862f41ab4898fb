package buzzout.cli;

import buzzout.plan.Joint;

/** What the person can do to a simulated board from the screen. */
interface BoardHands {
    /** On a real board the person has hands of their own. */
    BoardHands NONE = new BoardHands() {
        @Override
        public void press(int key) {
            // Nothing can be pressed from here.
        }

        @Override
        public void touch(Joint joint) {
            // Nor touched.
        }
    };

    /**
     * Presses a key for a moment.
     *
     * @param key index into the plan's keys
     */
    void press(int key);

    /** Holds the flying lead against a joint for a moment. */
    void touch(Joint joint);
}
