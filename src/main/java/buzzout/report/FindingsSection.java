package buzzout.report;

import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.Suspect;
import buzzout.plan.Plan;
import java.util.List;

/** The findings of a report: what and where, how sure, what was seen, what else it could be, what to do. */
final class FindingsSection {
    private final Markup page;
    private final Plan plan;

    private FindingsSection(Markup page, Plan plan) {
        this.page = page;
        this.plan = plan;
    }

    static void put(Markup page, Outcome outcome) {
        new FindingsSection(page, outcome.plan()).put(outcome.diagnosis());
    }

    private void put(Diagnosis diagnosis) {
        page.open("section", "id", "findings").put("h2", "Findings").line();
        List<Finding> findings = diagnosis.findings();
        if (findings.isEmpty()) {
            page.put("p", "There are none.").line();
        }
        for (int at = 0; at < findings.size(); at++) {
            finding(at + 1, findings.get(at));
        }
        diagnosis
                .troubles()
                .forEach(trouble ->
                        page.put("p", "Doubtful: " + sentence(trouble)).line());
        if (diagnosis.unexplored() >= 0.01) {
            page.put("p", Wording.unexplored(diagnosis.unexplored())).line();
        }
        page.close().line();
    }

    private void finding(int number, Finding finding) {
        boolean settled = finding.suspects().size() == 1;
        page.open("article", "class", "finding", "id", "finding-" + number).open("h3");
        page.put("span", String.valueOf(number), "class", "number");
        page.text(
                settled
                        ? sentence(finding.first().fault().says(plan))
                        : "One of these, which what was seen cannot tell apart:");
        page.close().line();
        if (!settled) {
            suspects(finding.suspects());
        }
        page.open("dl").line();
        fact("How sure", (settled ? "" : "that it is one of them: ") + Likelihood.inWords(finding.probability()));
        if (!finding.because().isEmpty()) {
            page.put("dt", "Seen").open("dd");
            finding.because()
                    .forEach(why -> page.open("div").text(sentence(why)).close());
            page.close().line();
        }
        finding.settle().ifPresent(step -> fact("To be sure", step));
        if (!finding.otherwise().isEmpty()) {
            page.put("dt", "It might also be").open("dd").text("though that fits less well:");
            suspects(finding.otherwise());
            page.close().line();
        }
        fact(
                settled ? "To repair" : "To repair the first",
                "Unplug first. " + sentence(finding.first().fault().repair(plan)));
        page.close().close().line();
    }

    private void fact(String label, String says) {
        page.put("dt", label).put("dd", sentence(says)).line();
    }

    private void suspects(List<Suspect> suspects) {
        page.open("ul");
        suspects.stream()
                .limit(Wording.MOST_SUSPECTS)
                .forEach(each ->
                        page.put("li", each.fault().says(plan) + " (" + Likelihood.percent(each.probability()) + ")"));
        if (suspects.size() > Wording.MOST_SUSPECTS) {
            page.put("li", "and " + (suspects.size() - Wording.MOST_SUSPECTS) + " less likely ones");
        }
        page.close().line();
    }

    private String sentence(String says) {
        return Wording.sentence(plan, says);
    }
}
