package buzzout.session;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.ProbeEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Events recorded beside one plan, read beside another of the same board: a pin is the same where its name is, and a key
 * too. Pairs of a pin that the other plan does not have are left out.
 */
public final class OtherPlan {
    private static final int NONE = -1;

    private final int[] pins;
    private final int[] keys;

    private OtherPlan(int[] pins, int[] keys) {
        this.pins = pins;
        this.keys = keys;
    }

    /** Why events beside {@code recorded} say nothing of {@code other}, as a clause; nothing when they do. */
    public static Optional<String> obstacle(Plan recorded, Plan other) {
        Set<String> keys = names(recorded);
        Optional<Key> strange =
                other.keys().stream().filter(key -> !keys.contains(key.name())).findFirst();
        if (strange.isPresent()) {
            return Optional.of("it knows no key \"" + strange.get().name() + '"');
        }
        Set<String> others = names(other);
        Optional<Key> lost = recorded.keys().stream()
                .filter(key -> !others.contains(key.name()))
                .findFirst();
        if (lost.isPresent()) {
            return Optional.of(
                    "it is about a key \"" + lost.get().name() + "\", which " + other.name() + " does not have");
        }
        return other.nets().stream()
                .filter(net -> recorded.pinIndex(net.pin()).isEmpty())
                .findFirst()
                .map(net -> "pin " + net.pin() + " of " + net.name() + " was not probed");
    }

    /**
     * The reading of events beside {@code recorded} for {@code other}.
     *
     * @throws IllegalArgumentException with the {@link #obstacle}, where there is one
     */
    public static OtherPlan between(Plan recorded, Plan other) {
        obstacle(recorded, other).ifPresent(why -> {
            throw new IllegalArgumentException(why);
        });
        return new OtherPlan(
                recorded.pins().stream()
                        .mapToInt(pin -> other.pinIndex(pin).orElse(NONE))
                        .toArray(),
                recorded.keys().stream()
                        .mapToInt(key -> other.key(key.name()).orElseThrow().index())
                        .toArray());
    }

    private static Set<String> names(Plan plan) {
        return plan.keys().stream().map(Key::name).collect(Collectors.toSet());
    }

    /** The session that the events give beside the other plan. */
    public Session replayed(Plan other, List<Event> events) {
        Session session = Session.of(other);
        for (Event event : events) {
            Optional<Event> read = read(event);
            if (read.isPresent()) {
                session = session.after(read.get());
            }
        }
        return session;
    }

    private Optional<Event> read(Event event) {
        if (event instanceof Event.ByPerson by) {
            return Optional.of(new Event.ByPerson(by.atMillis(), read(by.action())));
        }
        if (event instanceof Event.FromProbe from) {
            return read(from.event()).map(read -> new Event.FromProbe(from.atMillis(), read));
        }
        return Optional.of(event);
    }

    private Action read(Action action) {
        if (action instanceof Action.Called called) {
            return new Action.Called(keys[called.key()]);
        }
        if (action instanceof Action.NothingCame nothing) {
            return new Action.NothingCame(keys[nothing.key()]);
        }
        return action;
    }

    private Optional<ProbeEvent> read(ProbeEvent event) {
        if (event instanceof ProbeEvent.WholeState whole) {
            List<Pair> pairs = whole.pairs().list().stream()
                    .flatMap(pair -> read(pair).stream())
                    .toList();
            return Optional.of(new ProbeEvent.WholeState(whole.micros(), Pairs.of(pairs)));
        }
        if (event instanceof ProbeEvent.Closed closed) {
            return read(closed.pair()).map(pair -> new ProbeEvent.Closed(closed.micros(), pair));
        }
        if (event instanceof ProbeEvent.Opened opened) {
            return read(opened.pair()).map(pair -> new ProbeEvent.Opened(opened.micros(), pair));
        }
        return Optional.of(event);
    }

    private Optional<Pair> read(Pair pair) {
        int low = pins[pair.low()];
        int reads = pins[pair.reads()];
        return low == NONE || reads == NONE ? Optional.empty() : Optional.of(new Pair(low, reads));
    }
}
