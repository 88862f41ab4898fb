package buzzout.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What to do next over all findings. */
final class NextSteps {
    private static final int MOST = 5;

    private NextSteps() {}

    /**
     * Steps by the effort expected until all findings are certain, least first. A step counts for every finding that it
     * tells something about; the others need what they need anyway.
     */
    static List<NextStep> ranked(List<Settle> unsettled) {
        Set<Step> steps = new LinkedHashSet<>();
        unsettled.forEach(settle -> steps.addAll(settle.steps()));
        double all = unsettled.stream().mapToDouble(Settle::effort).sum();
        List<NextStep> ranked = new ArrayList<>();
        for (Step step : steps) {
            List<Settle> told = unsettled.stream()
                    .filter(settle -> settle.steps().contains(step))
                    .toList();
            double itself = told.get(0).effortOf(step);
            double saved = told.stream()
                    .mapToDouble(settle -> settle.effort() + itself - settle.effortWithFirst(step))
                    .sum();
            ranked.add(new NextStep(step, told.get(0).does(step), told.get(0).tells(step), all + itself - saved));
        }
        ranked.sort(Comparator.comparingDouble(next -> Math.rint(next.effort() * 1e6)));
        return ranked.subList(0, Math.min(MOST, ranked.size()));
    }
}
