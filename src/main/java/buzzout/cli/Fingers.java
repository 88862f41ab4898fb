package buzzout.cli;

import java.util.Set;

/** What the person's keystrokes do to the keys of a simulated board. Keys are indices into the plan's keys. */
interface Fingers {
    /** On a soldered board keystrokes press nothing. */
    Fingers NONE = new Fingers() {
        @Override
        public void press(int key) {}

        @Override
        public void holdOrLetGo(int key) {}

        @Override
        public void holdTogether(Set<Integer> keys) {}

        @Override
        public void letGo() {}
    };

    /** For a moment. */
    void press(int key);

    /** Until the same is asked again. */
    void holdOrLetGo(int key);

    /** All of them, long enough to stand, then none. */
    void holdTogether(Set<Integer> keys);

    /** No key is held any more. */
    void letGo();
}
