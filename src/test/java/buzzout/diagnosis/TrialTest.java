package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.circuit.Circuit;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.session.Observation.Hands;
import java.util.BitSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TrialTest {
    private static final Plan PLAN = ExamplePlan.quayside();

    @Test
    void keys_held_together_are_about_their_rows_and_columns_and_read_what_the_circuit_reads() {
        Trial trial = Trial.of(new Hands.Together(Set.of(key("Q"), key("S")))).orElseThrow();
        assertEquals(nets("R1", "C2", "R2", "C3"), trial.nets(PLAN));
        assertEquals("with Q and S held together", trial.says(PLAN));
        BitSet held = new BitSet();
        held.set(key("Q"));
        held.set(key("S"));
        Circuit circuit = Circuit.of(PLAN);
        assertEquals(circuit.read(held), trial.reading(circuit));
    }

    @Test
    void a_touch_is_about_the_net_that_is_touched() {
        int net = net("C3");
        Trial trial = Trial.of(new Hands.Touch(net, 1)).orElseThrow();
        assertEquals(nets("C3"), trial.nets(PLAN));
        assertEquals("the flying lead on the S joint of C3", trial.says(PLAN));
    }

    @Test
    void the_press_of_a_single_key_is_no_trial() {
        assertEquals(Optional.empty(), Trial.of(new Hands.Meant(key("Q"))));
    }

    private static int key(String name) {
        return PLAN.key(name).orElseThrow().index();
    }

    private static int net(String name) {
        return PLAN.nets().stream().map(net -> net.name()).toList().indexOf(name);
    }

    private static long nets(String... names) {
        return Stream.of(names).mapToLong(name -> 1L << net(name)).sum();
    }
}
