package buzzout.probe;

import buzzout.plan.Key;
import java.io.IOException;

/** A probe with a {@link TestBoard} on it, and hands. */
interface Bench extends AutoCloseable {
    LinkSource source();

    void press(Key key) throws Exception;

    void release(Key key) throws Exception;

    void reset() throws Exception;

    @Override
    default void close() throws IOException {}

    /** A simulated board on its own. */
    static Bench of(SimulatedBoard board) {
        return new Bench() {
            @Override
            public LinkSource source() {
                return board;
            }

            @Override
            public void press(Key key) {
                board.press(key);
            }

            @Override
            public void release(Key key) {
                board.release(key);
            }

            @Override
            public void reset() {
                board.reset();
            }
        };
    }
}
