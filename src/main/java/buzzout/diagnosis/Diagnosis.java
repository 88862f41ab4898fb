package buzzout.diagnosis;

import java.util.List;

/**
 * What is wrong with the board, as far as the evidence tells.
 *
 * @param findings most probable first
 * @param unexplored how much probability the search left unexplored, at most
 * @param troubles sentences about evidence that cannot be right, such as a log from another plan
 * @param again keys, by index, to press once more: slip and fault are about as probable there
 * @param next what would make the findings certain, least expected effort first; none when they are
 */
public record Diagnosis(
        List<Finding> findings, double unexplored, List<String> troubles, List<Integer> again, List<NextStep> next) {
    public static final Diagnosis NOTHING_YET = new Diagnosis(List.of(), 0, List.of());

    public Diagnosis {
        findings = List.copyOf(findings);
        troubles = List.copyOf(troubles);
        again = List.copyOf(again);
        next = List.copyOf(next);
    }

    /** With no key in doubt and no next step. */
    public Diagnosis(List<Finding> findings, double unexplored, List<String> troubles) {
        this(findings, unexplored, troubles, List.of(), List.of());
    }
}
