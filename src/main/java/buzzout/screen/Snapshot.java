package buzzout.screen;

import buzzout.diagnosis.Diagnosis;
import buzzout.plan.Plan;
import buzzout.session.Session;
import java.util.Optional;

/**
 * What is known at one moment; immutable, so that one thread can make it and another draw it.
 *
 * @param warning a sentence about the program's own trouble, while it lasts, such as a log that cannot be written
 */
public record Snapshot(Session session, Diagnosis diagnosis, EventLines events, Optional<String> warning) {
    /** Without a warning. */
    public Snapshot(Session session, Diagnosis diagnosis, EventLines events) {
        this(session, diagnosis, events, Optional.empty());
    }

    public static Snapshot of(Plan plan) {
        return new Snapshot(Session.of(plan), Diagnosis.NOTHING_YET, EventLines.NONE);
    }

    Plan plan() {
        return session.plan();
    }

    public Snapshot withWarning(String sentence) {
        return new Snapshot(session, diagnosis, events, Optional.of(sentence));
    }
}
