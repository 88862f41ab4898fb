package buzzout.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;

/**
 * How long the contacts of a session bounced, by key and in all.
 *
 * @param limitMicros a bounce that lasts longer is too long
 * @param keys those whose bounce was seen, the longest bounce first
 * @param histogram all presses by their longer bounce; the limit is where one bar ends and the next begins
 */
public record Bounces(long limitMicros, List<OfKey> keys, List<Bar> histogram) {
    /** Where bars of the histogram end, besides at the limit. */
    private static final List<Long> ENDS = List.of(500L, 1_000L, 2_000L, 5_000L, 10_000L, 20_000L);

    /**
     * One key's bounces, in microseconds.
     *
     * @param over how many presses bounced too long, as the key closed or as it was let go
     */
    public record OfKey(int key, int presses, int over, long longestPressing, long longestLettingGo) {
        public long longest() {
            return Math.max(longestPressing, longestLettingGo);
        }
    }

    /**
     * A bar of the histogram: presses that bounced longer than {@code fromMicros} and up to {@code toMicros}.
     *
     * @param toMicros {@link Long#MAX_VALUE} for the last bar
     * @param over whether that is too long
     */
    public record Bar(long fromMicros, long toMicros, int presses, boolean over) {}

    public Bounces {
        keys = List.copyOf(keys);
        histogram = List.copyOf(histogram);
    }

    /** Presses of known keys, each alone. */
    static Bounces of(Session session) {
        long limit = Math.round(session.plan().bounceLimitMillis() * 1000);
        TreeSet<Long> ends = new TreeSet<>(ENDS);
        ends.add(limit);
        ends.add(Long.MAX_VALUE);
        Bounced.By by = new Bounced.By(session.plan().keys().size(), limit, List.copyOf(ends));
        Bounced bounced = Growing.of(session.presses()).sum(by);
        return new Bounces(limit, bounced.keys(), bars(by, bounced.inBars()));
    }

    private static List<Bar> bars(Bounced.By by, List<Integer> presses) {
        List<Bar> bars = new ArrayList<>();
        long from = 0;
        for (int bar = 0; bar < presses.size(); bar++) {
            long to = by.ends().get(bar);
            bars.add(new Bar(from, to, presses.get(bar), bar > 0 && from >= by.limitMicros()));
            from = to;
        }
        return bars;
    }

    public int presses() {
        return keys.stream().mapToInt(OfKey::presses).sum();
    }

    /** The keys that bounced too long at least once, the longest bounce first. */
    public List<OfKey> overLimit() {
        List<OfKey> over = new ArrayList<>();
        for (OfKey key : keys) {
            if (key.over() > 0) {
                over.add(key);
            }
        }
        return Collections.unmodifiableList(over);
    }
}
