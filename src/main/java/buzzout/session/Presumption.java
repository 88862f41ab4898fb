package buzzout.session;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** Which key a press of the person's own choice most likely was, by what it closed. */
final class Presumption {
    /** Each once, for a session holds many presses of the same key. */
    private static final Map<Integer, OptionalInt> KNOWN = new ConcurrentHashMap<>();

    private Presumption() {}

    /** Of several keys that would do, the first that no other press stands for. */
    static OptionalInt of(Plan plan, List<Press> presses, Press press, Pairs pairs) {
        if (plan.isMadeUp()) {
            return OptionalInt.empty();
        }
        List<Integer> asPlanned = keysWhere(plan, pairs, key -> Expected.pair(plan, key));
        List<Integer> candidates = asPlanned.isEmpty()
                ? keysWhere(plan, pairs, key -> Expected.pair(plan, key).turned())
                : asPlanned;
        if (candidates.size() <= 1) {
            return candidates.isEmpty() ? OptionalInt.empty() : known(candidates.get(0));
        }
        Set<Integer> untaken = new LinkedHashSet<>(candidates);
        for (Press other : presses) {
            if (untaken.isEmpty()) {
                break;
            }
            if (other.micros() != press.micros()) {
                other.key().ifPresent(untaken::remove);
            }
        }
        return known(untaken.isEmpty() ? candidates.get(0) : untaken.iterator().next());
    }

    private static OptionalInt known(Integer key) {
        return KNOWN.computeIfAbsent(key, OptionalInt::of);
    }

    private static List<Integer> keysWhere(Plan plan, Pairs pairs, Function<Key, Pair> pairOf) {
        List<Integer> keys = new ArrayList<>();
        for (Key key : plan.keys()) {
            if (pairs.contains(pairOf.apply(key))) {
                keys.add(key.index());
            }
        }
        return keys;
    }
}
