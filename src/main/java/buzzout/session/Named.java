package buzzout.session;

import buzzout.circuit.Pairs;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;

/** The keys that were pressed by name, and what they closed. */
final class Named implements Summing.Sum<Press, Named> {
    private final long sinceMillis;
    private final Map<Integer, Pairs> closed;
    private OptionalInt latest;

    private Named(long sinceMillis, Map<Integer, Pairs> closed, OptionalInt latest) {
        this.sinceMillis = sinceMillis;
        this.closed = closed;
        this.latest = latest;
    }

    /** From this time of the session on. */
    record Since(long millis) implements Summing<Press, Named> {
        static final Since EVER = new Since(Long.MIN_VALUE);

        @Override
        public Named nothing() {
            return new Named(millis, new HashMap<>(), OptionalInt.empty());
        }
    }

    @Override
    public void take(Press press) {
        if (press.atMillis() >= sinceMillis && press.called().isPresent()) {
            latest = press.called();
            closed.put(latest.getAsInt(), press.pairs());
        }
    }

    @Override
    public Named copy() {
        return new Named(sinceMillis, new HashMap<>(closed), latest);
    }

    boolean contains(int key) {
        return closed.containsKey(key);
    }

    /** What a key closed when it was last pressed by name; nothing where it never was. */
    Pairs closedBy(int key) {
        return closed.getOrDefault(key, Pairs.NONE);
    }

    /** The key that was last pressed by name. */
    OptionalInt latest() {
        return latest;
    }
}
