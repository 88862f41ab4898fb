package buzzout.plan;

import java.util.List;
import java.util.Optional;

/**
 * What was read from a plan file.
 *
 * @param plan present when none of the problems is an error
 * @param problems in the order of the file
 */
public record PlanFile(Optional<Plan> plan, List<Problem> problems) {
    public PlanFile {
        problems = List.copyOf(problems);
    }
}
