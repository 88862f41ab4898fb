package buzzout.report;

import buzzout.journal.LogProblem;
import buzzout.plan.Key;
import buzzout.session.KeyState;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.util.ArrayList;
import java.util.List;

/** What the session did not look at, and what no session can see. */
final class NotTestedSection {
    private NotTestedSection() {}

    static void put(Markup page, Outcome outcome, List<LogProblem> problems) {
        page.open("section", "id", "not-tested")
                .put("h2", "What was not tested")
                .open("ul");
        lines(outcome.session(), problems).forEach(line -> page.put("li", line).line());
        page.put(
                "li",
                "A press that registers does not prove a sound joint: a pin still reads low with a few kilohms in the"
                        + " way, and a cold joint may hold for a while. Look at every joint before the case is closed.");
        page.close().close().line();
    }

    static List<String> lines(Session session, List<LogProblem> problems) {
        List<String> lines = new ArrayList<>();
        List<KeyState> states = session.states();
        List<String> untested = session.plan().keys().stream()
                .filter(key -> states.get(key.index()) == KeyState.UNTESTED)
                .map(Key::name)
                .toList();
        if (untested.isEmpty()) {
            lines.add("Every key was pressed, or was said to have been.");
        } else {
            lines.add(Wording.counted(untested.size(), "key") + " untested: " + String.join("  ", untested));
        }
        if (session.stage() != Stage.ENDED) {
            lines.add("The log has no end; the session may have gone on.");
        }
        if (session.lostChanges() > 0) {
            lines.add(Wording.counted(session.lostChanges(), "change") + " that the probe saw never arrived.");
        }
        problems.forEach(problem -> lines.add("From the log: " + problem));
        return lines;
    }
}
