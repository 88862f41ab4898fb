package buzzout.screen;

import buzzout.circuit.Circuit;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.diagnosis.Diagnosis;
import buzzout.plan.Plan;
import buzzout.probe.Identity;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Session;
import java.util.List;

/** A session made of events, at a steady 1.4 seconds a press, as the circuit model says that the board answers. */
final class Sitting {
    static final Identity PROBE = new Identity(1, "0.1.0", "ATmega32U4", 26, 16_000_000);
    private static final long MILLIS_A_PRESS = 1_400;
    private static final long MILLIS_HELD = 90;

    private final Circuit board;
    private Session session;
    private EventLines lines = EventLines.NONE;
    private long millis;

    Sitting(Plan plan, Circuit board) {
        this.board = board;
        this.session = Session.of(plan);
    }

    Sitting found() {
        hear(new ProbeEvent.Found(PROBE, "/dev/ttyACM0"));
        return hear(new ProbeEvent.WholeState(0, board.quiet().low()));
    }

    Sitting quietCheckDone() {
        millis = 2_000;
        return tell(new Action.QuietCheckDone());
    }

    /** A key goes down and up; when that closes nothing, the person says so. */
    Sitting press(int key) {
        millis += MILLIS_A_PRESS;
        Pairs quiet = board.quiet().low();
        List<Pair> closed =
                board.pressed(session.plan().keys().get(key)).low().minus(quiet).list();
        if (closed.isEmpty()) {
            return tell(new Action.NothingCame(key));
        }
        closed.forEach(pair -> hear(new ProbeEvent.Closed(millis * 1_000, pair)));
        long up = (millis + MILLIS_HELD) * 1_000;
        closed.forEach(pair -> hear(new ProbeEvent.Opened(up, pair)));
        return this;
    }

    /** A press whose contact opens once more before it rests, so many microseconds after it first closed. */
    Sitting bounce(int key, long micros) {
        millis += MILLIS_A_PRESS;
        for (Pair pair : board.pressed(session.plan().keys().get(key))
                .low()
                .minus(board.quiet().low())
                .list()) {
            hear(new ProbeEvent.Closed(millis * 1_000, pair));
            hear(new ProbeEvent.Opened(millis * 1_000 + micros / 2, pair));
            hear(new ProbeEvent.Closed(millis * 1_000 + micros, pair));
            hear(new ProbeEvent.Opened((millis + MILLIS_HELD) * 1_000, pair));
        }
        return this;
    }

    Sitting wait(int more) {
        millis += more;
        return this;
    }

    /** Keys go down, or up, all at this moment, each by what it closes alone. */
    Sitting move(boolean down, int... keys) {
        for (int key : keys) {
            for (Pair pair : board.pressed(session.plan().keys().get(key)).low().list()) {
                hear(down ? new ProbeEvent.Closed(millis * 1_000, pair) : new ProbeEvent.Opened(millis * 1_000, pair));
            }
        }
        return this;
    }

    Sitting hear(ProbeEvent event) {
        return take(new Event.FromProbe(millis, event));
    }

    Sitting tell(Action action) {
        return take(new Event.ByPerson(millis, action));
    }

    Snapshot snapshot(Diagnosis diagnosis) {
        return new Snapshot(session, diagnosis, lines);
    }

    Snapshot snapshot() {
        return snapshot(Diagnosis.NOTHING_YET);
    }

    private Sitting take(Event event) {
        Session after = session.after(event);
        lines = lines.after(session, event, after);
        session = after;
        return this;
    }
}
