package buzzout.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How long the contacts of a session bounced, by key and in all.
 *
 * @param limitMicros a bounce that lasts longer is too long
 * @param keys those whose bounce was seen, the longest bounce first
 */
public record Bounces(long limitMicros, List<OfKey> keys) {
    /** Where bars of the histogram end, besides at the limit. */
    private static final List<Long> ENDS = List.of(500L, 1_000L, 2_000L, 5_000L, 10_000L, 20_000L);

    /**
     * One key's bounces in microseconds; the two lists are as long as the key was pressed often.
     *
     * @param pressing at each press
     * @param lettingGo at the end of the same press
     */
    public record OfKey(int key, List<Long> pressing, List<Long> lettingGo) {
        public OfKey {
            pressing = List.copyOf(pressing);
            lettingGo = List.copyOf(lettingGo);
        }

        public int presses() {
            return pressing.size();
        }

        public long longestPressing() {
            return pressing.stream().mapToLong(each -> each).max().orElse(0);
        }

        public long longestLettingGo() {
            return lettingGo.stream().mapToLong(each -> each).max().orElse(0);
        }

        public long longest() {
            return Math.max(longestPressing(), longestLettingGo());
        }

        /** Each press's longer bounce. */
        Stream<Long> worst() {
            return IntStream.range(0, presses()).mapToObj(press -> Math.max(pressing.get(press), lettingGo.get(press)));
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
    }

    /** Presses of known keys, each alone. */
    static Bounces of(Session session) {
        Map<Integer, List<Contact>> contacts = session.presses().stream()
                .filter(press -> press.presumed().isPresent() && !press.inCompany())
                .collect(Collectors.groupingBy(
                        press -> press.presumed().getAsInt(),
                        TreeMap::new,
                        Collectors.mapping(Press::contact, Collectors.toList())));
        List<OfKey> seen = new ArrayList<>();
        contacts.forEach((key, moved) -> seen.add(new OfKey(
                key,
                moved.stream().map(Contact::bounceMicros).toList(),
                moved.stream().map(Contact::releaseBounceMicros).toList())));
        seen.sort(Comparator.comparingLong(OfKey::longest).reversed());
        return new Bounces(Math.round(session.plan().bounceLimitMillis() * 1000), seen);
    }

    public int presses() {
        return keys.stream().mapToInt(OfKey::presses).sum();
    }

    /** How many presses of a key bounced too long. */
    public int over(OfKey key) {
        return (int) key.worst().filter(this::isOver).count();
    }

    /** The keys that bounced too long at least once, the longest bounce first. */
    public List<OfKey> overLimit() {
        return keys.stream().filter(key -> isOver(key.longest())).toList();
    }

    private boolean isOver(long micros) {
        return micros > limitMicros;
    }

    /** All presses by their longer bounce; the limit is where one bar ends and the next begins. */
    public List<Bar> histogram() {
        TreeSet<Long> ends = new TreeSet<>(ENDS);
        ends.add(limitMicros);
        ends.add(Long.MAX_VALUE);
        List<Bar> bars = new ArrayList<>();
        long from = -1;
        for (long to : ends) {
            long after = from;
            int presses = (int) keys.stream()
                    .flatMap(OfKey::worst)
                    .filter(micros -> micros > after && micros <= to)
                    .count();
            bars.add(new Bar(Math.max(0, from), to, presses, from >= limitMicros));
            from = to;
        }
        return bars;
    }
}
