package buzzout.screen;

import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.Suspect;
import buzzout.plan.Plan;
import buzzout.report.Likelihood;
import buzzout.session.KeyState;
import java.util.ArrayList;
import java.util.List;

/** Findings as lines of text: all of the chosen one, of the others what there is room for. */
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

    /**
     * Lines that fit a pen's width, with one column to spare on both sides. Where not all fits the pen's rows, the least
     * probable findings lose their members first, and then their next step.
     */
    static List<Line> of(View view, Pen pen) {
        int findings = view.findings().size();
        for (int members = findings; members > 0; members--) {
            List<Line> lines = of(view, pen, members, findings);
            if (lines.size() <= pen.rows()) {
                return lines;
            }
        }
        for (int next = findings; next > 0; next--) {
            List<Line> lines = of(view, pen, 0, next);
            if (lines.size() <= pen.rows()) {
                return lines;
            }
        }
        return of(view, pen, 0, 0);
    }

    /** With the members of so many findings, and the next step of so many. */
    private static List<Line> of(View view, Pen pen, int members, int next) {
        FindingLines made = new FindingLines(view.plan(), pen);
        Diagnosis diagnosis = view.snapshot().diagnosis();
        if (!diagnosis.next().isEmpty()) {
            made.add("Next: " + diagnosis.next().get(0).says(), 6, Ink.STRONG, NONE);
        }
        for (String trouble : diagnosis.troubles()) {
            made.add(trouble, 2, Ink.STRONG, NONE);
        }
        for (int index = 0; index < diagnosis.findings().size(); index++) {
            Finding finding = diagnosis.findings().get(index);
            if (view.chosen().filter(finding::equals).isPresent()) {
                made.addWhole(finding, index);
                continue;
            }
            if (index < members) {
                made.addHead(finding, index, FEW);
            } else {
                made.addBrief(finding, index);
            }
            if (index < next && diagnosis.next().isEmpty()) {
                made.addNext(finding, index);
            }
        }
        if (diagnosis.findings().isEmpty()) {
            made.add(nothing(view), 0, Ink.PLAIN, NONE);
        } else if (diagnosis.unexplored() >= 0.01) {
            String most = Likelihood.percent(diagnosis.unexplored());
            made.add("Other explanations, not looked at: at most " + most + ".", 0, Ink.PLAIN, NONE);
        }
        return made.lines;
    }

    private static String nothing(View view) {
        if (view.plan().isMadeUp()) {
            return "None here: the plan that the board turns out to have is told in the end.";
        }
        return switch (view.session().stage()) {
            case NO_PROBE, QUIET_CHECK -> "They begin with the quiet check.";
            case PRESSING, REPAIRING, ENDED ->
                view.count(KeyState.GOOD) == view.plan().keys().size()
                        ? "None: every key is good."
                        : "Nothing wrong so far.";
        };
    }

    private void addBrief(Finding finding, int index) {
        String or = switch (finding.suspects().size()) {
            case 1 -> "";
            case 2 -> ", or another that looks alike so far";
            default -> ", or " + (finding.suspects().size() - 1) + " others that look alike so far";
        };
        add(start(finding, index) + finding.first().fault().says(plan) + or, 3, Ink.STRONG, index);
    }

    private void addHead(Finding finding, int index, int most) {
        if (finding.suspects().size() == 1) {
            addBrief(finding, index);
        } else {
            add(start(finding, index) + "one of these, which look alike so far", 3, Ink.STRONG, index);
            addSuspects(finding.suspects(), most, index);
        }
    }

    private void addNext(Finding finding, int index) {
        finding.settle().ifPresent(next -> add("   Next: " + next, 9, Ink.PLAIN, index));
    }

    /** Everything about it; the repair only where it is clear what to repair, or nothing would make it clearer. */
    private void addWhole(Finding finding, int index) {
        addHead(finding, index, finding.suspects().size());
        addNext(finding, index);
        if (finding.suspects().size() == 1 || finding.settle().isEmpty()) {
            String repair = finding.first().fault().repair(plan);
            add("   Repair: unplug first. " + repair, 11, Ink.PLAIN, index);
        }
        finding.because().forEach(seen -> add("   Seen: " + seen, 9, Ink.PLAIN, index));
        if (!finding.otherwise().isEmpty()) {
            add("   Or, though that fits less well:", 3, Ink.PLAIN, index);
            addSuspects(finding.otherwise(), finding.otherwise().size(), index);
        }
    }

    private static String start(Finding finding, int index) {
        return (index + 1) + "  " + Likelihood.inWords(finding.probability()) + ": ";
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
