package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.circuit.KeyOpen;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Evidence may also shrink: a slip is taken back, a repair makes presses void. */
class TakenBackTest {
    private static final Plan QUAYSIDE = ExamplePlan.quayside();

    @Test
    void a_finding_goes_with_the_evidence_that_it_rested_on() {
        int last = QUAYSIDE.keys().size() - 1;
        Evidence all = RollCall.complete(QUAYSIDE, List.of(new KeyOpen(last)));
        Evidence withoutLast =
                new Evidence(all.observations().subList(0, all.observations().size() - 1));
        Engine engine = new Engine(QUAYSIDE);
        assertEquals(1, engine.weigh(all).findings().size());
        assertEquals(new Engine(QUAYSIDE).weigh(withoutLast), engine.weigh(withoutLast));
        assertEquals(List.of(), engine.weigh(Evidence.NONE).findings());
    }
}
