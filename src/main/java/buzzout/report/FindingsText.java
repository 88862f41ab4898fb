package buzzout.report;

import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.Suspect;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.KeyState;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** Findings as plain text, to be read at the bench or pasted into a message that asks for help. */
public final class FindingsText {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final int MOST_SUSPECTS = 6;

    private static final List<String> CAUTIONS = List.of(
            "Unplug the board before you solder, and before you turn a meter to ohms or to the beeper.",
            "The iron is hot enough to burn after it is off. Wear eye protection when you solder or cut legs, draw"
                    + " the fumes away, and wash your hands after leaded solder.",
            "Local rules and the makers' instructions come before anything said here.");

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
        page.paragraph(heading());
        page.gap().paragraph(verdict());
        keys();
        List<Finding> findings = outcome.diagnosis().findings();
        for (int at = 0; at < findings.size(); at++) {
            finding(at + 1, findings.get(at));
        }
        bounces();
        held();
        doubts(outcome.diagnosis());
        if (!findings.isEmpty()) {
            page.gap().paragraph("Before you solder");
            CAUTIONS.forEach(caution -> page.paragraph("  ", caution));
        }
        return page.toString();
    }

    private String heading() {
        return plan.name()
                + outcome.unit().map(unit -> ", unit " + unit).orElse("")
                + outcome.started().map(at -> ", session of " + TIME.format(at)).orElse("");
    }

    private String verdict() {
        int keys = plan.keys().size();
        long good = outcome.session().count(KeyState.GOOD);
        long untested = outcome.session().count(KeyState.UNTESTED);
        String tested = good + " of " + counted(keys, "key") + " good"
                + (untested > 0 ? ", " + untested + " untested" : "") + ".";
        return switch (outcome.verdict()) {
            case GOOD -> "Nothing is wrong: all " + counted(keys, "key") + " are good.";
            case UNFINISHED -> "Nothing wrong found so far: " + tested;
            case FAULTY -> counted(outcome.diagnosis().findings().size(), "finding") + ": " + tested;
            case BOUNCING ->
                counted(outcome.session().bounces().overLimit().size(), "key") + " bounced too long: " + tested;
            case UNEXPLAINED -> "Something is wrong that no single finding explains yet: " + tested;
        };
    }

    private void keys() {
        for (KeyState state : KeyState.values()) {
            List<String> names = plan.keys().stream()
                    .filter(key -> outcome.session().states().get(key.index()) == state)
                    .map(Key::name)
                    .toList();
            if (!state.isWell() && !names.isEmpty()) {
                page.paragraph(
                        "  " + state.mark(ascii) + " " + String.format("%-13s", state.word()), String.join(" ", names));
            }
        }
    }

    private void finding(int number, Finding finding) {
        List<Suspect> suspects = finding.suspects();
        String sure = Likelihood.inWords(finding.probability());
        String lead = String.format("%2d. ", number);
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
        suspects.stream()
                .limit(MOST_SUSPECTS)
                .forEach(each -> page.paragraph(
                        "      - ", each.fault().says(plan) + " (" + Likelihood.percent(each.probability()) + ")"));
        if (suspects.size() > MOST_SUSPECTS) {
            page.paragraph("      - ", "and " + (suspects.size() - MOST_SUSPECTS) + " less likely ones");
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
            page.gap()
                    .paragraph("The search stopped early: up to " + Likelihood.percent(diagnosis.unexplored())
                            + " of the probability lies with explanations that were not looked at.");
        }
    }

    private static String counted(int count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }

    /** Begins with a capital, unless it begins with a name, and ends with a full stop. */
    private String sentence(String says) {
        if (says.isEmpty()) {
            return says;
        }
        String ended = ".!?".indexOf(says.charAt(says.length() - 1)) >= 0 ? says : says + ".";
        String first = ended.substring(0, 1).toUpperCase(Locale.ROOT);
        return beginsWithName(says) ? ended : first + ended.substring(1);
    }

    private boolean beginsWithName(String says) {
        String word = says.substring(0, says.indexOf(' ') < 0 ? says.length() : says.indexOf(' '));
        return plan.key(word).isPresent() || plan.net(word).isPresent();
    }
}
