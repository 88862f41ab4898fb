package buzzout.report;

import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Engine;
import buzzout.journal.SessionLog;
import buzzout.plan.Plan;
import buzzout.session.Session;
import java.time.OffsetDateTime;
import java.util.Optional;

/** What came out of one session: the board, the state of its keys, and what is wrong with it. */
public record Outcome(Optional<String> unit, Optional<OffsetDateTime> started, Session session, Diagnosis diagnosis) {
    /** Replays a log and weighs its evidence. */
    public static Outcome of(SessionLog log) {
        Session session = log.replayed();
        Diagnosis diagnosis = new Engine(log.plan()).weigh(session.evidence());
        return new Outcome(log.header().unit(), log.header().started(), session, diagnosis);
    }

    public Plan plan() {
        return session.plan();
    }

    public Verdict verdict() {
        return Verdict.of(session, diagnosis);
    }
}
