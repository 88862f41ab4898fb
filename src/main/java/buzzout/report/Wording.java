package buzzout.report;

import buzzout.plan.Plan;
import buzzout.session.KeyState;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;

/** What every form of a report says in the same words. */
final class Wording {
    /** Suspects of one finding that are listed. */
    static final int MOST_SUSPECTS = 6;

    /** Behind the first suspect of a finding that has several. */
    static final String OR_ALIKE = " (or what looks alike)";

    static final List<String> CAUTIONS = List.of(
            "Unplug the board before you solder, and before you turn a meter to ohms or to the beeper.",
            "The iron is hot enough to burn after it is off. Wear eye protection when you solder or cut legs, draw"
                    + " the fumes away, and wash your hands after leaded solder.",
            "Local rules and the makers' instructions come before anything said here.");

    private Wording() {}

    /** Such as {@code Quayside 46, unit Q-03, session of 2026-11-25 10:14}. */
    static String heading(Outcome outcome) {
        return outcome.plan().name()
                + outcome.unit().map(unit -> ", unit " + unit).orElse("")
                + outcome.started().map(at -> ", session of " + time(at)).orElse("");
    }

    /** Such as {@code 2026-11-25 10:14}. */
    static String time(OffsetDateTime at) {
        return at.toLocalDate() + " " + at.toLocalTime().truncatedTo(ChronoUnit.MINUTES);
    }

    static String verdict(Outcome outcome) {
        int keys = outcome.plan().keys().size();
        int untested = outcome.session().count(KeyState.UNTESTED);
        String tested = outcome.session().count(KeyState.GOOD) + " of " + counted(keys, "key") + " good"
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

    static String unexplored(double probability) {
        return "The search stopped early: up to " + Likelihood.percent(probability)
                + " of the probability lies with explanations that were not looked at.";
    }

    static String counted(long count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }

    /** Begins with a capital, unless it begins with a name, and ends with a full stop. */
    static String sentence(Plan plan, String says) {
        if (says.isEmpty()) {
            return says;
        }
        String ended = ".!?".indexOf(says.charAt(says.length() - 1)) >= 0 ? says : says + ".";
        String first = ended.substring(0, 1).toUpperCase(Locale.ROOT);
        return beginsWithName(plan, says) ? ended : first + ended.substring(1);
    }

    private static boolean beginsWithName(Plan plan, String says) {
        String word = says.substring(0, says.indexOf(' ') < 0 ? says.length() : says.indexOf(' '));
        return plan.key(word).isPresent() || plan.net(word).isPresent();
    }
}
