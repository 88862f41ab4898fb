package buzzout.session;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A session recorded beside one plan, read beside another of the same board: a pin is the same where its name is, and a key
 * too. Pairs of a pin that the other plan does not have are left out.
 */
public final class OtherPlan {
    private static final int NONE = -1;

    private final Plan other;
    private final int[] pins;
    private final int[] keys;

    private OtherPlan(Plan other, int[] pins, int[] keys) {
        this.other = other;
        this.pins = pins;
        this.keys = keys;
    }

    /** Why a session beside {@code recorded} says nothing of {@code other}, as a clause; nothing when it does. */
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
     * The reading of sessions beside {@code recorded} for {@code other}.
     *
     * @throws IllegalArgumentException with the {@link #obstacle}, where there is one
     */
    public static OtherPlan between(Plan recorded, Plan other) {
        obstacle(recorded, other).ifPresent(why -> {
            throw new IllegalArgumentException(why);
        });
        return new OtherPlan(
                other,
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

    /**
     * The session as it would have been with the other plan. What was held and touched, its
     * roll call and its repairs are left out.
     */
    public Session read(Session session) {
        List<Press> presses = new ArrayList<>();
        for (Press press : session.presses()) {
            presses.add(read(press, presses));
        }
        Session fresh = Session.of(other);
        return new Session(
                other,
                session.stage(),
                session.probe(),
                session.port(),
                read(session.quiet()),
                read(session.now()),
                presses,
                session.everyKeyPressed(),
                OptionalInt.empty(),
                Optional.empty(),
                fresh.lead(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                fresh.flex(),
                fresh.allAtOnce(),
                session.linkTrouble(),
                session.lostChanges(),
                session.garbledLines());
    }

    private Press read(Press press, List<Press> before) {
        Pairs pairs = read(press.pairs());
        OptionalInt called =
                press.called().isPresent() ? OptionalInt.of(keys[press.called().getAsInt()]) : OptionalInt.empty();
        OptionalInt presumed = pairs.isEmpty() ? called : Presumption.of(other, before, press, pairs);
        Press same = new Press(
                press.atMillis(), press.micros(), press.lastMicros(), pairs, presumed, called, press.inCompany());
        return press.read() ? same.readAs(keys[press.presumed().orElseThrow()]) : same;
    }

    private Pairs read(Pairs pairs) {
        return Pairs.of(
                pairs.list().stream().flatMap(pair -> read(pair).stream()).toList());
    }

    private Optional<Pair> read(Pair pair) {
        int low = pins[pair.low()];
        int reads = pins[pair.reads()];
        return low == NONE || reads == NONE ? Optional.empty() : Optional.of(new Pair(low, reads));
    }
}
