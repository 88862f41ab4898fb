package buzzout.session;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which nets the flying lead meets. Nets are indices into the plan's nets.
 *
 * @param bothWays the same copper as the lead
 * @param towards current flows only from the lead to these, through a diode
 * @param from current flows only from these to the lead, through a diode
 */
public record Met(Set<Integer> bothWays, Set<Integer> towards, Set<Integer> from) {
    /** What pairs with the spare pin say. */
    public static Met of(Plan plan, Pairs pairs) {
        Set<Integer> bothWays = new TreeSet<>();
        Set<Integer> towards = new TreeSet<>();
        Set<Integer> from = new TreeSet<>();
        plan.sparePinIndex().ifPresent(spare -> {
            for (int net = 0; net < plan.nets().size(); net++) {
                boolean there = pairs.contains(new Pair(/* low= */ net, /* reads= */ spare));
                boolean back = pairs.contains(new Pair(/* low= */ spare, /* reads= */ net));
                if (there || back) {
                    (there && back ? bothWays : there ? towards : from).add(net);
                }
            }
        });
        return new Met(bothWays, towards, from);
    }

    public boolean isNothing() {
        return bothWays.isEmpty() && towards.isEmpty() && from.isEmpty();
    }

    /** Where a net on the lead's copper meets another through a diode: the keys that are down there. */
    public List<Key> keysDown(Plan plan) {
        return plan.keys().stream()
                .filter(key -> isCrossing(key.row(), key.column()) || isCrossing(key.column(), key.row()))
                .toList();
    }

    private boolean isCrossing(int net, int other) {
        return bothWays.contains(net) && (towards.contains(other) || from.contains(other));
    }
}
