package buzzout.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.ExamplePlan;
import buzzout.plan.PlanFile;
import org.junit.jupiter.api.Test;

class KnownPlansTest {
    private final KnownPlans plans = new KnownPlans();

    @Test
    void a_plan_is_read_once() {
        PlanFile first = plans.read(ExamplePlan.quaysideText(), "a.toml");
        assertSame(first, plans.read(ExamplePlan.quaysideText(), "a.toml"));
        assertEquals(ExamplePlan.quayside(), first.plan().orElseThrow());
    }

    @Test
    void problems_name_the_file_that_each_log_says() {
        for (String name : new String[] {"a.toml", "b.toml"}) {
            String problem = plans.read("nonsense", name).problems().get(0).toString();
            assertTrue(problem.startsWith(name + ":1:"), problem);
        }
    }

    @Test
    void any_number_of_different_plans_can_be_read() {
        for (int plan = 0; plan < 100; plan++) {
            String text = ExamplePlan.quaysideText() + "# " + plan + "\n";
            assertTrue(plans.read(text, "a.toml").plan().isPresent());
        }
    }
}
