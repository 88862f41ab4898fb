package buzzout.cli;

import buzzout.diagnosis.Finding;
import buzzout.plan.Plan;
import buzzout.report.HeldText;
import buzzout.screen.EventLines;
import buzzout.screen.Snapshot;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;

/** What is new since the last look, as lines of text. */
final class PlainLines {
    /** A press may still grow for a moment, while its contact bounces. */
    private static final int SETTLING_MILLIS = 150;

    /** A finding less probable than this would only come and go. */
    private static final double WORTH_TELLING = 0.5;

    private long toldUntil = -1;
    private Set<String> told = Set.of();
    private OptionalInt called = OptionalInt.empty();
    private Stage stage = Stage.NO_PROBE;
    private String toldToHold = "";
    private boolean flexing;

    List<String> settled(Snapshot now, long nowMillis) {
        List<String> lines = new ArrayList<>();
        long until = nowMillis - SETTLING_MILLIS;
        for (EventLines.Line line : now.events().lines()) {
            if (line.atMillis() > toldUntil && line.atMillis() <= until) {
                lines.add(String.format(Locale.ROOT, "%9.3f  %s", line.atMillis() / 1000.0, line.text()));
            }
        }
        waiting(now.session(), lines);
        toldUntil = Math.max(toldUntil, until);
        boolean settling = now.events().lines().stream().anyMatch(line -> line.atMillis() > toldUntil);
        if (!settling) {
            held(now.session(), lines);
            findings(now, lines);
        }
        return lines;
    }

    /** What the person is to do now, when that is new. */
    private void waiting(Session session, List<String> lines) {
        if (!session.called().equals(called)) {
            called = session.called();
            called.ifPresent(
                    key -> lines.add("  press " + session.plan().keys().get(key).spoken() + " now"));
        }
        if (session.stage() != stage) {
            stage = session.stage();
            if (stage == Stage.REPAIRING) {
                lines.add(
                        "  Unplug, repair, plug in again: a quiet check follows. Done already? Say repaired once more."
                                + " Not now? Type `back`.");
            }
        }
    }

    /** What to hold now, and what came of it when it is over. */
    private void held(Session session, List<String> lines) {
        if (flexing && !session.flex().on()) {
            List<String> dropouts = HeldText.dropouts(session.plan(), session.flex());
            lines.add(dropouts.isEmpty() ? "  no key dropped out" : "  " + String.join("\n  ", dropouts));
        } else if (!flexing && session.flex().on()) {
            lines.add("  Hold one or more keys down firmly and flex the plate; type `flex` when you are done.");
        }
        flexing = session.flex().on();
        String toHold = session.allAtOnce().isOn() ? HeldText.toHold(session) : "";
        if (!toHold.equals(toldToHold)) {
            lines.add("  " + (toHold.isEmpty() ? HeldText.combinations(session) : toHold));
        }
        toldToHold = toHold;
    }

    private void findings(Snapshot now, List<String> lines) {
        Plan plan = now.session().plan();
        Set<String> found = new LinkedHashSet<>();
        for (Finding finding : now.diagnosis().findings()) {
            if (finding.probability() >= WORTH_TELLING) {
                found.add(summary(plan, finding));
            }
        }
        found.stream().filter(each -> !told.contains(each)).forEach(each -> lines.add("  likely: " + each));
        told.stream().filter(each -> !found.contains(each)).forEach(each -> lines.add("  no longer likely: " + each));
        told = found;
    }

    private static String summary(Plan plan, Finding finding) {
        String first = finding.first().fault().says(plan);
        int others = finding.suspects().size() - 1;
        return others == 0 ? first : first + ", or one of " + others + " others that look alike so far";
    }
}
