package buzzout.cli;

import buzzout.diagnosis.Finding;
import buzzout.plan.Plan;
import buzzout.screen.EventLines;
import buzzout.screen.Snapshot;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What is new since the last look, as lines of text. */
final class PlainLines {
    /** A press may still grow for a moment, while its contact bounces. */
    private static final int SETTLING_MILLIS = 150;

    private long toldUntil = -1;
    private Set<String> told = Set.of();

    List<String> settled(Snapshot now, long nowMillis) {
        List<String> lines = new ArrayList<>();
        long until = nowMillis - SETTLING_MILLIS;
        for (EventLines.Line line : now.events().lines()) {
            if (line.atMillis() > toldUntil && line.atMillis() <= until) {
                lines.add(String.format(Locale.ROOT, "%9.3f  %s", line.atMillis() / 1000.0, line.text()));
            }
        }
        toldUntil = Math.max(toldUntil, until);
        findings(now, lines);
        return lines;
    }

    private void findings(Snapshot now, List<String> lines) {
        Plan plan = now.session().plan();
        Set<String> found = new LinkedHashSet<>();
        for (Finding finding : now.diagnosis().findings()) {
            found.add(finding.first().fault().says(plan));
        }
        found.stream().filter(each -> !told.contains(each)).forEach(each -> lines.add("  found: " + each));
        told.stream().filter(each -> !found.contains(each)).forEach(each -> lines.add("  no longer found: " + each));
        told = found;
    }
}
