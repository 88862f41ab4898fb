package buzzout.report;

import buzzout.journal.SessionLog;
import buzzout.session.Session;
import java.util.ArrayList;
import java.util.List;

/** How a session went, as plain text. */
public final class SessionText {
    private SessionText() {}

    /**
     * One thing to know about a session.
     *
     * @param label such as {@code Probe}
     */
    record Fact(String label, String says) {}

    /** Some lines of at most 80 columns. */
    public static String of(SessionLog log, Session session, boolean ascii) {
        Page page = new Page(ascii);
        facts(log, session).forEach(fact -> page.paragraph(fact.label() + ": ", fact.says()));
        return page.toString();
    }

    static List<Fact> facts(SessionLog log, Session session) {
        List<Fact> facts = new ArrayList<>();
        session.probe()
                .ifPresent(probe -> facts.add(new Fact(
                        "Probe",
                        probe.chip() + ", sketch " + probe.sketch()
                                + session.port().map(port -> ", on " + port).orElse(""))));
        facts.add(new Fact("Session", String.join(", ", went(log, session))));
        session.linkTrouble().ifPresent(why -> facts.add(new Fact("Link", why)));
        return facts;
    }

    private static List<String> went(SessionLog log, Session session) {
        List<String> went = new ArrayList<>();
        went.add(Wording.counted(log.events().size(), "event"));
        went.add(session.presses().size() + " press" + (session.presses().size() == 1 ? "" : "es"));
        if (!log.events().isEmpty()) {
            went.add(duration(log.events().get(log.events().size() - 1).atMillis()));
        }
        if (session.lostChanges() > 0) {
            went.add(session.lostChanges() + " changes lost on the way");
        }
        if (session.garbledLines() > 0) {
            went.add(session.garbledLines() + " lines not understood");
        }
        return went;
    }

    static String duration(long millis) {
        long seconds = millis / 1000;
        return seconds < 60 ? seconds + " s" : seconds / 60 + " min " + seconds % 60 + " s";
    }
}
