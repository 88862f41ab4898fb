package buzzout.journal;

import buzzout.plan.Plan;
import buzzout.session.Event;
import buzzout.session.OtherPlan;
import buzzout.session.Session;
import java.util.List;

/** A session as it was written down: what it was about, and every event in the order in which they came. */
public record SessionLog(LogHeader header, Plan plan, List<Event> events) {
    public SessionLog {
        events = List.copyOf(events);
    }

    /** The session that these events give, the same as when they came from a probe. */
    public Session replayed() {
        Session session = Session.of(plan);
        for (Event event : events) {
            session = session.after(event);
        }
        return session;
    }

    /**
     * The session read beside another plan of the same board.
     *
     * @throws IllegalArgumentException where it says nothing of that plan; {@link OtherPlan#obstacle} tells
     */
    public Session replayed(Plan other) {
        return OtherPlan.between(plan, other).read(replayed());
    }
}
