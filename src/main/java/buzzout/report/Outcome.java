package buzzout.report;

import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Engines;
import buzzout.journal.SessionLog;
import buzzout.plan.Plan;
import buzzout.session.Session;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/** What came out of one session: the board, the state of its keys, and what is wrong with it. */
public record Outcome(Optional<String> unit, Optional<OffsetDateTime> started, Session session, Diagnosis diagnosis) {
    private static final String MADE_UP =
            "the rows and columns of this plan are made up, so nothing can be wrong with them; `buzzout learn` writes the"
                    + " plan that the board turns out to have";

    /** Replays a log and weighs its evidence. */
    public static Outcome of(SessionLog log) {
        return of(log, new Engines());
    }

    /** The same of one of many logs, which these engines weigh one after another. */
    public static Outcome of(SessionLog log, Engines engines) {
        return of(log.header().unit(), log.header().started(), log.replayed(), engines);
    }

    /** The same with another plan of the same board; {@link SessionLog#replayed(Plan)} says when that can be. */
    public static Outcome of(SessionLog log, Plan other) {
        return of(log.header().unit(), log.header().started(), log.replayed(other));
    }

    /** Weighs a session's evidence from scratch, so that a session and its replay come to the same. */
    public static Outcome of(Optional<String> unit, Optional<OffsetDateTime> started, Session session) {
        return of(unit, started, session, new Engines());
    }

    /** The same for one of many sessions, which these engines weigh one after another. */
    public static Outcome of(
            Optional<String> unit, Optional<OffsetDateTime> started, Session session, Engines engines) {
        if (session.plan().isMadeUp()) {
            return new Outcome(unit, started, session, new Diagnosis(List.of(), 0, List.of(MADE_UP)));
        }
        return new Outcome(unit, started, session, engines.weigh(session.plan(), session.evidence()));
    }

    public Plan plan() {
        return session.plan();
    }

    public Verdict verdict() {
        return Verdict.of(session, diagnosis);
    }
}
