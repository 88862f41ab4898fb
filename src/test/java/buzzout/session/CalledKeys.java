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

/** The events of a roll call on a board with faults, recorded beside a plan that may be another board's. */
final class CalledKeys {
    private final List<Event> events = new ArrayList<>();
    private long micros;

    private CalledKeys() {}

    /**
     * Every key of {@code said} is called and pressed on a board that was built as {@code built}, with these faults.
     * Both plans must have the same keys, and {@code said} every pin.
     */
    static List<Event> on(Plan built, Collection<? extends Fault> faults, Plan said) {
        CalledKeys calls = new CalledKeys();
        Circuit circuit = Circuit.of(built, faults);
        Pairs quiet = renamed(circuit.quiet().low(), built, said);
        calls.hear(new ProbeEvent.Found(new Identity(1, "0.1.0", "any", 63, 16_000_000), "port"));
        calls.hear(new ProbeEvent.WholeState(0, quiet));
        calls.say(new Action.QuietCheckDone());
        for (Key key : said.keys()) {
            Key pressed = built.key(key.name()).orElseThrow();
            Pairs seen = renamed(circuit.pressed(pressed).low(), built, said).minus(quiet);
            calls.say(new Action.Called(key.index()));
            seen.list().forEach(pair -> calls.hear(new ProbeEvent.Closed(calls.micros, pair)));
            if (seen.isEmpty()) {
                calls.say(new Action.NothingCame(key.index()));
            }
            calls.micros += 100_000;
            seen.list().forEach(pair -> calls.hear(new ProbeEvent.Opened(calls.micros, pair)));
            calls.micros += 100_000;
        }
        return calls.events;
    }

    static Session session(Plan plan, List<Event> events) {
        Session session = Session.of(plan);
        for (Event event : events) {
            session = session.after(event);
        }
        return session;
    }

    private static Pairs renamed(Pairs pairs, Plan from, Plan to) {
        return Pairs.of(pairs.list().stream()
                .map(pair -> new Pair(
                        to.pinIndex(from.pins().get(pair.low())).orElseThrow(),
                        to.pinIndex(from.pins().get(pair.reads())).orElseThrow()))
                .toList());
    }

    private void hear(ProbeEvent event) {
        events.add(new Event.FromProbe(micros / 1_000, event));
    }

    private void say(Action action) {
        events.add(new Event.ByPerson(micros / 1_000, action));
    }
}
