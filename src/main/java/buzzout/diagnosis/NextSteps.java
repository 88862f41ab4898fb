package buzzout.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What to do next over all findings. */
final class NextSteps {
    private static final int MOST = 5;

    private static final Comparator<NextStep> LEAST_FIRST =
            (one, other) -> Double.compare(Math.rint(one.effort() * 1e6), Math.rint(other.effort() * 1e6));

    private NextSteps() {}

    /**
     * Steps by the effort expected until all findings are certain, least first. A step counts for every finding that it
     * tells something about; the others need what they need anyway.
     */
    static List<NextStep> ranked(List<Settle> unsettled) {
        Set<Step> steps = new LinkedHashSet<>();
        double all = 0;
        for (Settle settle : unsettled) {
            steps.addAll(settle.steps());
            all += settle.effort();
        }
        List<NextStep> ranked = new ArrayList<>();
        for (Step step : steps) {
            List<Settle> told = toldBy(step, unsettled);
            double itself = told.get(0).effortOf(step);
            double effort = all + itself;
            for (Settle settle : told) {
                effort -= settle.effort() + itself - settle.effortWithFirst(step);
            }
            ranked.add(new NextStep(step, told.get(0).does(step), told.get(0).tells(step), effort));
        }
        ranked.sort(LEAST_FIRST);
        return ranked.subList(0, Math.min(MOST, ranked.size()));
    }

    /** Those that a step tells something about. */
    private static List<Settle> toldBy(Step step, List<Settle> unsettled) {
        List<Settle> told = new ArrayList<>();
        for (Settle settle : unsettled) {
            if (settle.steps().contains(step)) {
                told.add(settle);
            }
        }
        return told;
    }
}
