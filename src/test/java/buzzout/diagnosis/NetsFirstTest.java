package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class NetsFirstTest {
    private static final Plan PLAN = ExamplePlan.quayside();

    @Test
    void it_tells_when_it_gave_up_before_it_had_tried_all_that_it_knows() {
        List<Fault> truth = Stream.of("swapped:C8:C9", "open:R3:M:,", "bridge:C2:C3:A:S")
                .map(code -> Catalogue.find(PLAN, code).orElseThrow())
                .toList();
        Case board = new Case(PLAN, Priors.judged());
        board.take(RollCall.complete(PLAN, truth));
        List<Hypothesis> fromNothing = List.of(board.weigh(new BitSet()));

        NetsFirst hasty = new NetsFirst(board, () -> false, 10);
        NetsFirst patient = new NetsFirst(board, () -> false);
        double hastily = hasty.best(fromNothing).score();
        double patiently = patient.best(fromNothing).score();

        assertTrue(hasty.wasCutShort());
        assertFalse(patient.wasCutShort());
        assertTrue(patiently > hastily, patiently + " against " + hastily);
    }
}
