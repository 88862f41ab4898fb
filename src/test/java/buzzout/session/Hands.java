package buzzout.session;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.Identity;
import buzzout.probe.ProbeEvent;
import java.util.ArrayList;
import java.util.List;

/** A session on Quayside 46, told one closing, opening and word at a time; the probe's clock is the session's. */
final class Hands {
    static final Plan PLAN = ExamplePlan.quayside();

    private final List<Event> events = new ArrayList<>();
    private long micros;

    /** The probe is found, and the quiet check passes with these pairs closed. */
    static Hands afterQuietCheck(Pair... closed) {
        Hands hands = new Hands();
        hands.hear(new ProbeEvent.Found(new Identity(1, "0.1.0", "ATmega32U4", 26, 16_000_000), "port"));
        hands.hear(new ProbeEvent.WholeState(0, Pairs.of(closed)));
        return hands.wait(2_000).say(new Action.QuietCheckDone());
    }

    static Key key(String name) {
        return PLAN.key(name).orElseThrow();
    }

    static Pair pair(String key) {
        return new Pair(key(key).row(), key(key).column());
    }

    Hands wait(int millis) {
        micros += millis * 1_000L;
        return this;
    }

    Hands close(Pair pair) {
        return hear(new ProbeEvent.Closed(micros, pair));
    }

    Hands open(Pair pair) {
        return hear(new ProbeEvent.Opened(micros, pair));
    }

    /** Presses a key that closes this, holds it for 80 ms, and leaves 80 ms. */
    Hands press(Pair... pairs) {
        List.of(pairs).forEach(this::close);
        wait(80);
        List.of(pairs).forEach(this::open);
        return wait(80);
    }

    Hands press(String key) {
        return press(pair(key));
    }

    Hands say(Action action) {
        events.add(new Event.ByPerson(micros / 1_000, action));
        return this;
    }

    Hands hear(ProbeEvent event) {
        events.add(new Event.FromProbe(micros / 1_000, event));
        return this;
    }

    List<Event> events() {
        return List.copyOf(events);
    }

    Session session() {
        Session session = Session.of(PLAN);
        for (Event event : events) {
            session = session.after(event);
        }
        return session;
    }

    List<Press> presses() {
        return session().presses();
    }

    KeyState state(String key) {
        return session().states().get(key(key).index());
    }
}
