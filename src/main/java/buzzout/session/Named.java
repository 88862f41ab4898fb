package buzzout.session;

import buzzout.circuit.Pairs;
import java.util.HashMap;
import java.util.Map;

/** The keys that were pressed by name, and what they closed. */
final class Named implements Summing.Sum<Press, Named> {
    private final long sinceMillis;
    private final Map<Integer, Pairs> closed;

    private Named(long sinceMillis, Map<Integer, Pairs> closed) {
        this.sinceMillis = sinceMillis;
        this.closed = closed;
    }

    /** From this time of the session on. */
    record Since(long millis) implements Summing<Press, Named> {
        static final Since EVER = new Since(Long.MIN_VALUE);

        @Override
        public Named nothing() {
            return new Named(millis, new HashMap<>());
        }
    }

    @Override
    public void take(Press press) {
        if (press.atMillis() >= sinceMillis) {
            press.called().ifPresent(key -> closed.put(key, press.pairs()));
        }
    }

    @Override
    public Named copy() {
        return new Named(sinceMillis, new HashMap<>(closed));
    }

    boolean contains(int key) {
        return closed.containsKey(key);
    }

    /** What a key closed when it was last pressed by name; nothing where it never was. */
    Pairs closedBy(int key) {
        return closed.getOrDefault(key, Pairs.NONE);
    }
}
