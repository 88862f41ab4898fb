package buzzout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.fuzz.OneLine;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Any bytes as a plan file. */
public final class PlanTarget {
    private PlanTarget() {}

    /** There is a plan or an error; each problem is one harmless line; a plan written out is the same plan. */
    public static void fuzzerTestOneInput(byte[] input) {
        PlanFile file = PlanReader.read(new String(input, StandardCharsets.UTF_8), "q.toml");
        boolean error = file.problems().stream().anyMatch(each -> each.severity() == Problem.Severity.ERROR);
        assertEquals(error, file.plan().isEmpty());
        file.problems().forEach(problem -> {
            OneLine.check(problem.toString());
            assertTrue(problem.line() >= 1 && problem.column() >= 1, problem::toString);
        });
        file.plan().ifPresent(plan -> {
            PlanFile again = PlanReader.read(PlanText.of(plan, List.of()), "q.toml");
            assertTrue(again.plan().isPresent(), () -> again.problems().toString());
        });
    }
}
