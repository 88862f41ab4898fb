package buzzout.session;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.Identity;
import buzzout.probe.ProbeEvent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalInt;

/** A board in the hands of somebody who presses what is called, as the circuit model says that it answers. */
final class CalledBoard {
    private final Plan plan;
    private final List<Event> events = new ArrayList<>();
    private final List<Key> called = new ArrayList<>();
    private Circuit circuit;
    private Session session;
    private long millis;

    CalledBoard(Plan plan, Collection<? extends Fault> faults) {
        this.plan = plan;
        circuit = Circuit.of(plan, faults);
        session = Session.of(plan);
        plug();
        say(new Action.QuietCheckDone());
    }

    void plug() {
        hear(new ProbeEvent.Found(new Identity(1, "0.1.0", "ATmega32U4", 26, 16_000_000), "port"));
        hear(new ProbeEvent.WholeState(millis * 1_000, circuit.quiet().low()));
    }

    void unplug() {
        hear(new ProbeEvent.LinkLost("unplugged"));
    }

    void solder(Collection<? extends Fault> faults) {
        circuit = Circuit.of(plan, faults);
    }

    /** The key that is called next, if any is. */
    OptionalInt call() {
        OptionalInt next = NextCall.of(session);
        next.ifPresent(key -> {
            called.add(plan.keys().get(key));
            say(new Action.Called(key));
        });
        return next;
    }

    /** Presses a key; when nothing comes of it, says so of the key that is called. */
    void press(int key) {
        int meant = session.called().orElse(key);
        Pairs closed = circuit.pressed(plan.keys().get(key))
                .low()
                .minus(circuit.quiet().low())
                .minus(session.quiet());
        if (closed.isEmpty()) {
            say(new Action.NothingCame(meant));
        }
        for (Pair pair : closed.list()) {
            hear(new ProbeEvent.Closed(millis * 1_000, pair));
        }
        millis += 100;
        for (Pair pair : closed.list()) {
            hear(new ProbeEvent.Opened(millis * 1_000, pair));
        }
        millis += 100;
    }

    /** Presses what is called until nothing more is. */
    CalledBoard pressAll() {
        for (OptionalInt next = call(); next.isPresent(); next = call()) {
            press(next.getAsInt());
        }
        return this;
    }

    CalledBoard say(Action action) {
        millis += 10;
        return take(new Event.ByPerson(millis, action));
    }

    private void hear(ProbeEvent event) {
        take(new Event.FromProbe(millis, event));
    }

    private CalledBoard take(Event event) {
        events.add(event);
        session = session.after(event);
        return this;
    }

    Session session() {
        return session;
    }

    List<Key> called() {
        return called;
    }

    List<Event> events() {
        return events;
    }
}
