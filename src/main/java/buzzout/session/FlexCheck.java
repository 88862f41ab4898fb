package buzzout.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What dropped out while keys were held and the plate was flexed. Keys are indices into the plan's keys, times
 * microseconds of probe time.
 *
 * @param on whether it goes on; what dropped out stays known when it is over
 * @param grips the keys that are held, or were a moment ago
 * @param dropouts in the order in which they ended
 */
public record FlexCheck(boolean on, Map<Integer, Grip> grips, List<Dropout> dropouts) {
    public static final FlexCheck NONE = new FlexCheck(false, Map.of(), List.of());

    /**
     * A pair that stays away longer was let go. Judgement: a plate is flexed to and fro faster than this; a finger that is
     * lifted and put back sooner is taken for a dropout, so the person is asked to press firmly, and can take it back.
     */
    static final long MOST_MICROS = 1_000_000;

    /**
     * Pairs that drop within this dropped together. A sweep takes about a millisecond and can be held up by the lines
     * that tell what changed before it; this is two sweeps so held up.
     */
    static final long TOGETHER_MICROS = 5_000;

    /**
     * A held key opened and came back; chatter in between is one dropout.
     *
     * @param stayed the keys that were held all the while
     */
    public record Dropout(int key, long from, long to, Set<Integer> stayed) {
        public Dropout {
            stayed = Set.copyOf(stayed);
        }

        public long micros() {
            return to - from;
        }
    }

    /** Dropouts of several keys at once, as often as the same keys did, with the keys that stayed at any of those times. */
    public record Pattern(Set<Integer> dropped, Set<Integer> stayed, int times, long longestMicros) {
        public Pattern {
            dropped = Set.copyOf(dropped);
            stayed = Set.copyOf(stayed);
        }
    }

    public FlexCheck {
        grips = Map.copyOf(grips);
        dropouts = Growing.of(dropouts);
    }

    FlexCheck begun() {
        return new FlexCheck(true, Map.of(), dropouts);
    }

    /** What is still held is on its way up, and bounces. */
    FlexCheck over() {
        return on ? new FlexCheck(false, grips, dropouts) : this;
    }

    /** Keys that were held together are on their way up since now. */
    FlexCheck lettingGo(Set<Integer> keys, long micros) {
        Map<Integer, Grip> up = new HashMap<>(grips);
        keys.forEach(key -> up.put(key, Grip.from(micros).openAt(micros)));
        return new FlexCheck(on, up, dropouts);
    }

    /** Whether closing now is only the bounce of a key on its way up. */
    boolean isBounce(int key, long micros) {
        return grips.getOrDefault(key, Grip.NONE).bouncesUp(micros);
    }

    /** Nothing is held: the link went down. */
    FlexCheck letGo() {
        return new FlexCheck(on, Map.of(), dropouts);
    }

    FlexCheck closes(int key, long micros) {
        Grip grip = grips.getOrDefault(key, Grip.NONE);
        if (!on || !grip.isDropout(micros)) {
            return with(key, Grip.from(micros), dropouts);
        }
        Dropout dropout = new Dropout(key, grip.openedAt(), micros, heldSince(grip.openedAt()));
        return with(key, grip.backAt(micros), Growing.of(dropouts).with(dropout));
    }

    FlexCheck opens(int key, long micros) {
        Grip grip = grips.getOrDefault(key, Grip.NONE);
        if (!grip.isClosed()) {
            return this;
        } else if (!on || !grip.chatters(micros)) {
            return with(key, grip.openAt(micros), dropouts);
        }
        for (int index = dropouts.size() - 1; index >= 0; index--) {
            if (dropouts.get(index).key() == key) {
                Growing<Dropout> fewer =
                        Growing.of(dropouts).first(index).withAll(dropouts.subList(index + 1, dropouts.size()));
                return with(key, grip.openAt(dropouts.get(index).from()), fewer);
            }
        }
        return with(key, grip.openAt(micros), dropouts);
    }

    /** Without the keys that dropped together last. */
    FlexCheck takenBack() {
        List<List<Dropout>> groups = groups();
        return groups.isEmpty()
                ? this
                : new FlexCheck(
                        on,
                        grips,
                        dropouts.stream()
                                .filter(each -> !groups.get(groups.size() - 1).contains(each))
                                .toList());
    }

    /** The keys that are held now. */
    public Set<Integer> held() {
        Set<Integer> held = new TreeSet<>();
        grips.forEach((key, grip) -> {
            if (grip.isClosed()) {
                held.add(key);
            }
        });
        return held;
    }

    /** The keys that dropped out at least once. */
    public Set<Integer> unsteady() {
        Set<Integer> keys = new TreeSet<>();
        for (Dropout each : dropouts) {
            keys.add(each.key());
        }
        return keys;
    }

    /** Which keys dropped together, most often first. */
    public List<Pattern> patterns() {
        Map<Set<Integer>, Pattern> patterns = new LinkedHashMap<>();
        for (List<Dropout> group : groups()) {
            Pattern once = pattern(group);
            patterns.merge(once.dropped(), once, FlexCheck::both);
        }
        List<Pattern> oftenest = new ArrayList<>(patterns.values());
        oftenest.sort((one, other) -> Integer.compare(other.times(), one.times()));
        return Collections.unmodifiableList(oftenest);
    }

    /** Dropouts by what dropped together, oldest first. */
    List<List<Dropout>> groups() {
        List<List<Dropout>> groups = new ArrayList<>();
        List<Dropout> inOrder = new ArrayList<>(dropouts);
        inOrder.sort((one, other) -> Long.compare(one.from(), other.from()));
        for (Dropout each : inOrder) {
            List<Dropout> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
            boolean together = !last.isEmpty()
                    && each.from() - last.get(0).from() <= TOGETHER_MICROS
                    && last.stream().noneMatch(other -> other.key() == each.key());
            if (together) {
                last.add(each);
            } else {
                groups.add(new ArrayList<>(List.of(each)));
            }
        }
        return groups;
    }

    static Pattern pattern(List<Dropout> group) {
        Set<Integer> dropped = new HashSet<>();
        Set<Integer> stayed = new HashSet<>(group.get(0).stayed());
        long longest = 0;
        for (Dropout each : group) {
            dropped.add(each.key());
            stayed.retainAll(each.stayed());
            longest = Math.max(longest, each.micros());
        }
        stayed.removeAll(dropped);
        return new Pattern(dropped, stayed, 1, longest);
    }

    private static Pattern both(Pattern one, Pattern other) {
        Set<Integer> stayed = new HashSet<>(one.stayed());
        stayed.addAll(other.stayed());
        return new Pattern(
                one.dropped(),
                stayed,
                one.times() + other.times(),
                Math.max(one.longestMicros(), other.longestMicros()));
    }

    private Set<Integer> heldSince(long micros) {
        Set<Integer> held = new HashSet<>();
        grips.forEach((key, grip) -> {
            if (grip.isSteadySince(micros)) {
                held.add(key);
            }
        });
        return held;
    }

    private FlexCheck with(int key, Grip grip, List<Dropout> now) {
        Map<Integer, Grip> changed = new HashMap<>(grips);
        changed.put(key, grip);
        return new FlexCheck(on, changed, now);
    }
}
