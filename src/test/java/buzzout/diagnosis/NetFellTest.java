package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import buzzout.session.Observation.Hands;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class NetFellTest {
    private final Plan plan = ExamplePlan.quayside();

    @Test
    void a_net_that_met_ground_for_a_moment_is_told_and_no_key_or_diode_is_suspected() {
        Pairs low = Pairs.of(IntStream.range(1, plan.nets().size())
                .mapToObj(driven -> new Pair(driven, 0))
                .collect(Collectors.toSet()));
        Diagnosis diagnosis = new Engine(plan)
                .weigh(new Evidence(List.of(
                        new Observation(new Hands.Off(), Pairs.NONE), new Observation(new Hands.NetFell(0), low))));
        assertEquals(List.of(), diagnosis.findings());
        assertEquals(
                List.of(
                        "R1 read low for a moment whatever was driven, which no key does: its wire touches ground at times;"
                                + " unplug, then look along R1 and at pin "
                                + plan.nets().get(0).pin()
                                + " for a bare strand or solder that reaches ground"),
                diagnosis.troubles());
    }
}
