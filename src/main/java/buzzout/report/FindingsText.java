package buzzout.report;

import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.NextStep;
import buzzout.diagnosis.Suspect;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.KeyState;
import java.util.ArrayList;
import java.util.List;

/** Findings as plain text, to be read at the bench or pasted into a message that asks for help. */
public final class FindingsText {
    private static final int STATE_WIDTH = 13;

    private final Outcome outcome;
    private final Plan plan;
    private final boolean ascii;
    private final Page page;

    private FindingsText(Outcome outcome, boolean ascii) {
        this.outcome = outcome;
        this.plan = outcome.plan();
        this.ascii = ascii;
        this.page = new Page(ascii);
    }

    /** The whole text, lines of at most 80 columns, the last one ended. */
    public static String of(Outcome outcome, boolean ascii) {
        return new FindingsText(outcome, ascii).written();
    }

    private String written() {
        page.paragraph(Wording.heading(outcome));
        page.gap().paragraph(Wording.verdict(outcome));
        keys();
        List<Finding> findings = outcome.diagnosis().findings();
        for (int at = 0; at < findings.size(); at++) {
            finding(at + 1, findings.get(at));
        }
        bounces();
        held();
        doubts(outcome.diagnosis());
        List<NextStep> next = outcome.diagnosis().next();
        if (!next.isEmpty()) {
            page.gap().paragraph("Next: ", sentence(next.get(0).says()));
        }
        if (!findings.isEmpty()) {
            page.gap().paragraph("Before you solder");
            for (String caution : Wording.CAUTIONS) {
                page.paragraph("  ", caution);
            }
        }
        return page.toString();
    }

    private void keys() {
        List<KeyState> states = outcome.session().states();
        for (KeyState state : KeyState.values()) {
            List<String> names = new ArrayList<>();
            for (Key key : plan.keys()) {
                if (!state.isWell() && states.get(key.index()) == state) {
                    names.add(key.name());
                }
            }
            if (!names.isEmpty()) {
                page.paragraph("  " + state.mark(ascii) + " " + padded(state.word()), String.join(" ", names));
            }
        }
    }

    private static String padded(String state) {
        return state + " ".repeat(Math.max(0, STATE_WIDTH - state.length()));
    }

    private void finding(int number, Finding finding) {
        List<Suspect> suspects = finding.suspects();
        String sure = Likelihood.inWords(finding.probability());
        String lead = (number < 10 ? " " : "") + number + ". ";
        page.gap();
        if (suspects.size() == 1) {
            page.paragraph(lead, sentence(finding.first().fault().says(plan)) + " This is " + sure + ".");
        } else {
            page.paragraph(
                    lead,
                    "One of these, which what was seen cannot tell apart. That it is one of them is " + sure + ".");
            suspects(suspects);
        }
        finding.because().forEach(why -> labelled("Seen", sentence(why)));
        if (!finding.otherwise().isEmpty()) {
            page.paragraph("    ", "It might also be, though that fits less well:");
            suspects(finding.otherwise());
        }
        finding.settle().ifPresent(step -> labelled("To be sure", sentence(step)));
        labelled(
                suspects.size() == 1 ? "To repair" : "To repair the first",
                "Unplug first. " + sentence(finding.first().fault().repair(plan)));
    }

    private void labelled(String label, String says) {
        page.paragraph("    " + label + ": ", 8, says);
    }

    private void suspects(List<Suspect> suspects) {
        for (Suspect each : suspects.subList(0, Math.min(Wording.MOST_SUSPECTS, suspects.size()))) {
            page.paragraph("      - ", each.fault().says(plan) + " (" + Likelihood.percent(each.probability()) + ")");
        }
        if (suspects.size() > Wording.MOST_SUSPECTS) {
            page.paragraph("      - ", "and " + (suspects.size() - Wording.MOST_SUSPECTS) + " less likely ones");
        }
    }

    private void held() {
        List<String> dropouts = HeldText.dropouts(plan, outcome.session().flex());
        boolean together = !outcome.session().allAtOnce().tried().isEmpty();
        if (!dropouts.isEmpty() || together) {
            page.gap();
        }
        dropouts.forEach(each -> page.paragraph("Flexed: ", sentence(each)));
        if (together) {
            page.paragraph("All at once: ", sentence(HeldText.combinations(outcome.session())));
            outcome.session().allAtOnce().tried().stream()
                    .filter(each -> !HeldText.isAsComputed(outcome.session(), each))
                    .forEach(each -> page.paragraph("    ", sentence(HeldText.answer(outcome.session(), each))));
        }
    }

    private void bounces() {
        List<String> over = BounceText.over(plan, outcome.session().bounces());
        if (!over.isEmpty()) {
            page.gap();
            over.forEach(each -> page.paragraph("Bounce: ", sentence(each)));
        }
    }

    private void doubts(Diagnosis diagnosis) {
        if (!diagnosis.troubles().isEmpty()) {
            page.gap();
            diagnosis.troubles().forEach(trouble -> page.paragraph("Doubtful: ", sentence(trouble)));
        }
        if (diagnosis.unexplored() >= 0.01) {
            page.gap().paragraph(Wording.unexplored(diagnosis.unexplored()));
        }
    }

    private String sentence(String says) {
        return Wording.sentence(plan, says);
    }
}
