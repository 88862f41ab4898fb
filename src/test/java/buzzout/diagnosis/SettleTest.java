package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.Pairs;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What to do next, and that doing it ends in the truth. */
class SettleTest {
    private static final Plan PLAN = ExamplePlan.quayside();

    private static Fault fault(String code) {
        return Catalogue.find(PLAN, code).orElseThrow();
    }

    /** Does what is asked, one step after another, until nothing is asked or only a meter would help. */
    private static List<Step> followed(Fault truth) {
        Circuit circuit = Circuit.of(PLAN, List.of(truth));
        Pairs quiet = circuit.quiet().low();
        List<Observation> seen =
                new ArrayList<>(RollCall.complete(PLAN, List.of(truth)).observations());
        Engine engine = new Engine(PLAN);
        List<Step> steps = new ArrayList<>();
        Diagnosis diagnosis = engine.weigh(new Evidence(seen));
        while (!diagnosis.next().isEmpty() && steps.size() < 12) {
            Step step = diagnosis.next().get(0).step();
            steps.add(step);
            if (step instanceof Step.Press press) {
                Pairs answer = circuit.pressed(PLAN.keys().get(press.key())).low();
                seen.add(new Observation(new Hands.Meant(press.key()), quiet.plus(answer)));
            } else if (step instanceof Step.Touch touch) {
                Pairs met = circuit.touching(touch.joint()).quiet().low();
                seen.add(new Observation(
                        new Hands.Touch(touch.joint().net(PLAN), touch.joint().place(PLAN)), quiet.plus(met)));
            } else {
                break;
            }
            diagnosis = engine.weigh(new Evidence(seen));
        }
        assertEquals(1, diagnosis.findings().size());
        assertEquals(truth, diagnosis.findings().get(0).first().fault());
        assertTrue(diagnosis.findings().get(0).first().probability() > 0.9, () -> seen.toString());
        return steps;
    }

    @Test
    void the_last_key_of_a_column_is_pressed_again_and_then_touched() {
        for (String code : List.of("dead:V", "open:C5:F:V")) {
            List<Step> steps = followed(fault(code));
            System.out.println(code + ": " + steps);
            assertTrue(steps.stream().anyMatch(Step.Touch.class::isInstance), steps::toString);
        }
    }
}
