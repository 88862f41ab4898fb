package buzzout.screen;

import buzzout.diagnosis.Diagnosis;
import buzzout.plan.Plan;
import buzzout.session.Session;

/** What is known at one moment; immutable, so that one thread can make it and another draw it. */
public record Snapshot(Session session, Diagnosis diagnosis, EventLines events) {
    public static Snapshot of(Plan plan) {
        return new Snapshot(Session.of(plan), Diagnosis.NOTHING_YET, EventLines.NONE);
    }

    Plan plan() {
        return session.plan();
    }
}
