package buzzout.session;

import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

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
        List<Integer> asPlanned = keysBetween(plan, pairs, plan.stripe());
        List<Integer> candidates =
                asPlanned.isEmpty() ? keysBetween(plan, pairs, plan.stripe().other()) : asPlanned;
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

    /** The keys whose two nets are a pair, with the pin of this kind of net driven. */
    private static List<Integer> keysBetween(Plan plan, Pairs pairs, NetKind driven) {
        List<Integer> keys = new ArrayList<>(1);
        for (Key key : plan.keys()) {
            if (pairs.contains(key.net(driven), key.net(driven.other()))) {
                keys.add(key.index());
            }
        }
        return keys;
    }
}
