package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.circuit.Fault;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Many sessions weighed one after another. */
class EnginesTest {
    private static final Plan PLAN = ExamplePlan.quayside();
    private static final Plan OTHER = Grids.branching5x12();

    private final Engines engines = new Engines();

    @Test
    void what_was_weighed_before_changes_nothing_of_what_is_found() {
        int boards = Campaign.size(48, 1000);
        for (int board = 0; board < boards; board++) {
            // Every tenth is of another plan, every seventh was pressed freely, and they share none of it.
            Plan plan = board % 10 == 9 ? OTHER : PLAN;
            List<Fault> faults = Campaign.likelyFaults(new Random(46_000 + board), plan, Priors.of(plan), board % 4);
            Evidence evidence = board % 7 == 6 ? RollCall.freePlay(plan, faults) : RollCall.complete(plan, faults);

            assertEquals(
                    new Engine(plan).weigh(evidence),
                    engines.weigh(plan, evidence),
                    () -> Campaign.codes(plan, faults));
        }
    }
}
