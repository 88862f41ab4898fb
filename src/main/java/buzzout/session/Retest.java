package buzzout.session;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What must be pressed again after a repair. */
public final class Retest {
    private Retest() {}

    /** The keys, by index, that answer differently with this fault than without: what its repair can have changed. */
    public static Set<Integer> keys(Plan plan, Fault fault) {
        Circuit sound = Circuit.of(plan);
        Circuit faulty = Circuit.of(plan, List.of(fault));
        return plan.keys().stream()
                .filter(key -> !sound.pressed(key).equals(faulty.pressed(key)))
                .map(Key::index)
                .collect(Collectors.toUnmodifiableSet());
    }
}
