package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.FaultKind;
import buzzout.circuit.KeyOpen;
import buzzout.plan.Plan;
import buzzout.plan.PlanReader;
import buzzout.session.Evidence;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class PriorsTest {
    private static final String TWO_KEYS = """
            name = "Two"
            controller = "ATmega32U4"
            [rows]
            R1 = { pin = "D0", keys = "A B" }
            [columns]
            C1 = { pin = "D4", keys = "A" }
            C2 = { pin = "D6", keys = "B" }
            """;

    @Test
    void every_kind_has_a_judged_prior_and_a_plan_may_set_each() {
        List<FaultKind> kinds = List.of(FaultKind.values());
        String all = kinds.stream()
                .map(kind -> kind.code() + " = 0.01" + kinds.indexOf(kind) + "\n")
                .collect(Collectors.joining("", TWO_KEYS + "[priors]\n", ""));
        Priors set = Priors.of(plan(all));
        for (FaultKind kind : kinds) {
            assertTrue(Priors.judged().of().containsKey(kind));
            assertEquals(
                    Double.parseDouble("0.01" + kinds.indexOf(kind)), set.of().get(kind));
        }
        assertEquals(Priors.judged(), Priors.of(plan(TWO_KEYS)));
    }

    @Test
    void a_plan_that_holds_leads_to_be_sound_hardly_suspects_them() {
        Plan plan = plan(TWO_KEYS + "[priors]\nlead-off = 0.0001\n");
        Evidence silent = RollCall.complete(plan, List.of(new KeyOpen(0)));
        assertTrue(probability(plan(TWO_KEYS), silent, "lead-off:C1") > 0.2);
        assertTrue(probability(plan, silent, "lead-off:C1") < 0.03);
    }

    private static double probability(Plan plan, Evidence evidence, String code) {
        return Exhaustive.posterior(plan, Priors.of(plan), evidence, 2).entrySet().stream()
                .filter(each -> each.getKey().code(plan).equals(code))
                .mapToDouble(Map.Entry::getValue)
                .sum();
    }

    private static Plan plan(String text) {
        return PlanReader.read(text, "two.toml").plan().orElseThrow();
    }
}
