package buzzout.session;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.FaultKind;
import buzzout.circuit.Layout;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.List;
import java.util.Set;

/** What lies on the way of all keys that dropped out together, and of none that stayed. */
public final class CommonPath {
    private CommonPath() {}

    /**
     * The opens, as faults, each of which silences every dropped key and no steady one, by the circuit model: links,
     * jumpers, leads, and where only one key dropped its own branch.
     */
    public static List<Fault> of(Plan plan, Set<Integer> dropped, Set<Integer> stayed) {
        Layout layout = new Layout(plan);
        return FaultKind.OPEN.stream()
                .flatMap(kind -> kind.all(plan).stream())
                .filter(fault -> dropped.stream().allMatch(key -> isOnNetOf(fault, plan, key)))
                .filter(fault -> {
                    Circuit broken = Circuit.of(layout, List.of(fault));
                    return dropped.stream().noneMatch(key -> answers(broken, plan, key))
                            && stayed.stream().allMatch(key -> answers(broken, plan, key));
                })
                .toList();
    }

    private static boolean isOnNetOf(Fault fault, Plan plan, int index) {
        Key key = plan.keys().get(index);
        Set<Integer> nets = fault.nets(plan);
        return nets.contains(key.row()) || nets.contains(key.column());
    }

    private static boolean answers(Circuit circuit, Plan plan, int index) {
        Key key = plan.keys().get(index);
        return circuit.pressed(key).low().contains(Expected.pair(plan, key));
    }
}
