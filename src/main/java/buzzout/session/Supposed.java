package buzzout.session;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.Layout;
import buzzout.circuit.Reading;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What each key would add to the quiet sweep, in reading order, on a board with some faults.
 *
 * @param faults none on a sound board
 */
record Supposed(List<Fault> faults, List<Reading> answers) {
    Supposed {
        faults = List.copyOf(faults);
        answers = List.copyOf(answers);
    }

    static Supposed sound(Plan plan) {
        return by(new Layout(plan), plan, List.of());
    }

    private static Supposed by(Layout layout, Plan plan, List<Fault> faults) {
        Circuit circuit = Circuit.of(layout, faults);
        Reading quiet = circuit.quiet();
        return new Supposed(
                faults,
                plan.keys().stream()
                        .map(key -> beyond(quiet, circuit.pressed(key)))
                        .toList());
    }

    private static Reading beyond(Reading quiet, Reading pressed) {
        return new Reading(pressed.low().minus(quiet.low()), pressed.between().minus(quiet.between()));
    }

    /** With one more fault that several of these keys' answers may depend on. */
    Stream<Supposed> withOneMore(Plan plan, List<Key> keys) {
        Layout layout = new Layout(plan);
        return Catalogue.of(plan).stream()
                .filter(fault -> fault.onlyKey().isEmpty() && concerned(plan, fault, keys) > 1)
                .filter(fault ->
                        faults.stream().allMatch(other -> java.util.Collections.disjoint(other.parts(), fault.parts())))
                .map(fault -> {
                    List<Fault> more = new ArrayList<>(faults);
                    more.add(fault);
                    return by(layout, plan, more);
                });
    }

    private static long concerned(Plan plan, Fault fault, List<Key> keys) {
        var nets = fault.nets(plan);
        return keys.stream()
                .filter(key -> nets.contains(key.row()) || nets.contains(key.column()))
                .count();
    }
}
