package buzzout.session;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;

/** Which key a press of the person's own choice most likely was, by what it closed. */
final class Presumption {
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
            return candidates.stream().mapToInt(Integer::intValue).findFirst();
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
        return OptionalInt.of(untaken.stream().findFirst().orElse(candidates.get(0)));
    }

    private static List<Integer> keysWhere(Plan plan, Pairs pairs, Function<Key, Pair> pairOf) {
        return plan.keys().stream()
                .filter(key -> pairs.contains(pairOf.apply(key)))
                .map(Key::index)
                .toList();
    }
}
