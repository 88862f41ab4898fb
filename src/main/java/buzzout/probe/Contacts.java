package buzzout.probe;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Random;

/**
 * The switches of a simulated board over time. A contact bounces before it rests, by default for 0.2 to 2 ms, which is
 * what most of 16 measured switches did (J. Ganssle, A Guide to Debouncing: 1.6 ms on average, 6.2 ms at most).
 */
final class Contacts {
    private static final int SHORTEST_BOUNCE = 200;
    private static final int LONGEST_BOUNCE = 2_000;
    private static final int SHORTEST_FLIGHT = 60;

    private final PriorityQueue<Move> moves = new PriorityQueue<>();
    private final Map<Integer, Long> bounces = new HashMap<>();
    private final BitSet closed = new BitSet();
    private final Random random;
    private long order;

    Contacts(long seed) {
        random = new Random(seed);
    }

    private record Move(long at, long order, int key, boolean closes) implements Comparable<Move> {
        @Override
        public int compareTo(Move other) {
            return at == other.at ? Long.compare(order, other.order) : Long.compare(at, other.at);
        }
    }

    /** From now on this key bounces so many microseconds; 0 is none. */
    void bounce(int key, long micros) {
        bounces.put(key, micros);
    }

    /** A key goes down, or up, beginning now. */
    void move(int key, boolean down, long now) {
        moves.removeIf(move -> move.key() == key);
        long bounce = bounces.getOrDefault(key, (long) random.nextInt(SHORTEST_BOUNCE, LONGEST_BOUNCE));
        boolean closes = down;
        for (long at = now; at < now + bounce; at += random.nextInt(SHORTEST_FLIGHT, LONGEST_BOUNCE / 4)) {
            moves.add(new Move(at, order++, key, closes));
            closes = !closes;
        }
        moves.add(new Move(now + bounce, order++, key, down));
    }

    /** When the next contact moves; {@link Long#MAX_VALUE} where none will. */
    long next() {
        Move next = moves.peek();
        return next == null ? Long.MAX_VALUE : next.at();
    }

    /** The keys whose contacts are closed now. */
    BitSet closedAt(long now) {
        for (Move next = moves.peek(); next != null && next.at() <= now; next = moves.peek()) {
            closed.set(next.key(), next.closes());
            moves.remove();
        }
        return (BitSet) closed.clone();
    }
}
