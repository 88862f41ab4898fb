package buzzout.report;

import buzzout.journal.SessionLog;
import buzzout.session.Session;
import java.util.ArrayList;
import java.util.List;

/** How a session went, as plain text. */
public final class SessionText {
    private SessionText() {}

    /** Some lines of at most 80 columns. */
    public static String of(SessionLog log, Session session, boolean ascii) {
        Page page = new Page(ascii);
        session.probe()
                .ifPresent(probe -> page.paragraph("Probe: " + probe.chip() + ", sketch " + probe.sketch()
                        + session.port().map(port -> ", on " + port).orElse("")));
        List<String> went = new ArrayList<>();
        went.add(log.events().size() + " events");
        went.add(session.presses().size() + " presses");
        if (!log.events().isEmpty()) {
            went.add(duration(log.events().get(log.events().size() - 1).atMillis()));
        }
        if (session.lostChanges() > 0) {
            went.add(session.lostChanges() + " changes lost on the way");
        }
        if (session.garbledLines() > 0) {
            went.add(session.garbledLines() + " lines not understood");
        }
        page.paragraph("Session: " + String.join(", ", went));
        session.linkTrouble().ifPresent(why -> page.paragraph("Link: ", why));
        return page.toString();
    }

    private static String duration(long millis) {
        long seconds = millis / 1000;
        return seconds < 60 ? seconds + " s" : seconds / 60 + " min " + seconds % 60 + " s";
    }
}
