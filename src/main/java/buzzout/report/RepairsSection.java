package buzzout.report;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.journal.SessionLog;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.KeyState;
import buzzout.session.Retest;
import buzzout.session.Session;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What was repaired within the session and how the keys that it concerns stand now; and what the person noted. */
final class RepairsSection {
    private final Plan plan;
    private final Session session;
    private final List<Event.ByPerson> said;

    RepairsSection(SessionLog log) {
        plan = log.plan();
        session = log.replayed();
        said = said(log);
    }

    /** Repairs and notes; what was told twice of one repair, once. */
    private static List<Event.ByPerson> said(SessionLog log) {
        List<Event.ByPerson> said = new ArrayList<>();
        Set<String> underWay = new HashSet<>();
        for (Event event : log.events()) {
            if (event instanceof Event.ByPerson by) {
                if (by.action() instanceof Action.QuietCheckDone) {
                    underWay.clear();
                } else if (by.action() instanceof Action.Noted
                        || (by.action() instanceof Action.Repaired repaired && underWay.add(repaired.code()))) {
                    said.add(by);
                }
            }
        }
        return said;
    }

    void put(Markup page) {
        if (said.isEmpty()) {
            return;
        }
        page.open("section", "id", "repairs")
                .put("h2", "Repairs, retests and notes")
                .open("ul");
        lines().forEach(line -> page.put("li", line).line());
        page.close().close().line();
    }

    /** One line for each, with the time since the session began. */
    List<String> lines() {
        return said.stream()
                .map(by -> "After " + SessionText.duration(by.atMillis()) + ": " + words(by.action()))
                .toList();
    }

    private String words(Action action) {
        if (action instanceof Action.Repaired repaired) {
            return Catalogue.find(plan, repaired.code())
                    .map(this::repaired)
                    .orElseGet(() -> "repaired " + repaired.code() + ".");
        }
        return action instanceof Action.Noted noted ? "note: " + noted.text() : "";
    }

    private String repaired(Fault fault) {
        Set<Integer> changed = Retest.keys(plan, fault);
        List<String> open = plan.keys().stream()
                .filter(key -> changed.contains(key.index()) && !state(key).isWell())
                .map(key -> key.name() + " (" + state(key).word() + ")")
                .toList();
        String retest = changed.isEmpty()
                ? "the quiet check tells whether it holds"
                : open.isEmpty()
                        ? "all " + Wording.counted(changed.size(), "key") + " that it can have changed are good now"
                        : "not good yet: " + String.join(", ", open);
        return "repaired, because " + fault.says(plan) + "; " + retest + ".";
    }

    private KeyState state(Key key) {
        return session.states().get(key.index());
    }
}
