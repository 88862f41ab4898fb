package buzzout.screen;

import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.Suspect;
import buzzout.plan.Plan;
import buzzout.report.Likelihood;
import buzzout.session.KeyState;
import java.util.ArrayList;
import java.util.List;

/** Findings as lines of text: all of the chosen one, the heads of the others. */
final class FindingLines {
    /** The members of a finding that are listed until it is chosen. */
    private static final int FEW = 3;

    private static final int NONE = -1;

    /** @param finding the finding's index, or −1 */
    record Line(String text, Ink ink, int finding) {}

    private final Plan plan;
    private final Pen pen;
    private final List<Line> lines = new ArrayList<>();

    private FindingLines(Plan plan, Pen pen) {
        this.plan = plan;
        this.pen = pen;
    }

    /** Lines that fit a pen's width, with one column to spare on both sides. */
    static List<Line> of(View view, Pen pen) {
        FindingLines made = new FindingLines(view.plan(), pen);
        Diagnosis diagnosis = view.snapshot().diagnosis();
        diagnosis.troubles().forEach(trouble -> made.add(trouble, 2, Ink.STRONG, NONE));
        for (int index = 0; index < diagnosis.findings().size(); index++) {
            Finding finding = diagnosis.findings().get(index);
            made.addFinding(
                    finding, index, view.chosen().filter(finding::equals).isPresent());
        }
        if (diagnosis.findings().isEmpty()) {
            made.add(nothing(view), 0, Ink.PLAIN, NONE);
        } else if (diagnosis.unexplored() >= 0.01) {
            made.add(
                    "Other explanations, not looked at: at most " + Likelihood.percent(diagnosis.unexplored()) + ".",
                    0,
                    Ink.PLAIN,
                    NONE);
        }
        return made.lines;
    }

    private static String nothing(View view) {
        return switch (view.session().stage()) {
            case NO_PROBE, QUIET_CHECK -> "They begin with the quiet check.";
            case PRESSING, ENDED ->
                view.count(KeyState.GOOD) == view.plan().keys().size()
                        ? "None: every key is good."
                        : "Nothing wrong so far.";
        };
    }

    private void addFinding(Finding finding, int index, boolean chosen) {
        String head = (index + 1) + "  " + Likelihood.inWords(finding.probability()) + ": ";
        if (finding.suspects().size() == 1) {
            add(head + finding.first().fault().says(plan), 3, Ink.STRONG, index);
        } else {
            add(head + "one of these, which look alike so far", 3, Ink.STRONG, index);
            addSuspects(finding.suspects(), chosen ? finding.suspects().size() : FEW, index);
        }
        if (chosen) {
            finding.because().forEach(seen -> add("   Seen: " + seen, 9, Ink.PLAIN, index));
            if (!finding.otherwise().isEmpty()) {
                add("   Or, though that fits less well:", 3, Ink.PLAIN, index);
                addSuspects(finding.otherwise(), finding.otherwise().size(), index);
            }
        }
        finding.settle().ifPresent(next -> add("   Next: " + next, 9, Ink.PLAIN, index));
        if (chosen && (finding.suspects().size() == 1 || finding.settle().isEmpty())) {
            String repair = finding.first().fault().repair(plan);
            add("   Repair: unplug first. " + repair, 11, Ink.PLAIN, index);
        }
    }

    private void addSuspects(List<Suspect> suspects, int most, int index) {
        for (Suspect suspect : suspects.subList(0, Math.min(most, suspects.size()))) {
            String odds = Likelihood.percent(suspect.probability());
            add("   - " + odds + ": " + suspect.fault().says(plan), 5, Ink.PLAIN, index);
        }
        if (suspects.size() > most) {
            add("   - and " + (suspects.size() - most) + " more", 5, Ink.PLAIN, index);
        }
    }

    private void add(String text, int indent, Ink ink, int finding) {
        pen.wrap(text, pen.columns() - 2, indent).forEach(line -> lines.add(new Line(line, ink, finding)));
    }
}
