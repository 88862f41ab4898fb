package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Circuit;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AnotherBoardTest {
    private static final Plan PLAN = ExamplePlan.quayside();

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void a_log_from_another_plan_is_told_and_accuses_no_joint_with_confidence(long seed) {
        Diagnosis diagnosis =
                new Engine(PLAN).weigh(answersOfOtherKeys(seed, PLAN.keys().size()));
        assertEquals(AnotherBoard.WARNING, diagnosis.troubles().get(0));
        assertTrue(diagnosis.findings().stream().allMatch(finding -> finding.probability() < 0.5));
    }

    @Test
    void a_few_wrong_presses_do_not_make_it_another_plan() {
        Diagnosis diagnosis = new Engine(PLAN).weigh(answersOfOtherKeys(1, 3));
        assertFalse(diagnosis.troubles().contains(AnotherBoard.WARNING));
    }

    /** A roll call in which so many keys answer as others, at random. */
    private static Evidence answersOfOtherKeys(long seed, int keys) {
        Circuit circuit = Circuit.of(PLAN);
        List<Key> answering = new ArrayList<>(PLAN.keys());
        Collections.shuffle(answering.subList(0, keys), new Random(seed));
        List<Observation> observations = new ArrayList<>();
        observations.add(new Observation(new Hands.Off(), circuit.quiet().low()));
        for (Key key : PLAN.keys()) {
            observations.add(new Observation(
                    new Hands.Meant(key.index()),
                    circuit.pressed(answering.get(key.index())).low()));
        }
        return new Evidence(observations);
    }
}
