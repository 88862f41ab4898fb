package buzzout.diagnosis;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.Identity;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Session;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/** A person who reads a board through: every key once, in reading order, with slips of the finger. */
public final class Reader {
    /** What can go wrong at a key's turn. */
    enum Slip {
        LEFT_OUT,
        TWICE,
        EXCHANGED_WITH_THE_NEXT,
        NEIGHBOUR_INSTEAD
    }

    private static final long MICROS_HELD = 90_000;
    private static final long MICROS_A_PRESS = 400_000;

    private final Plan plan;
    private final Circuit board;
    private final Pairs quiet;
    private Session session;
    private long micros;

    public Reader(Plan plan, Collection<? extends Fault> faults) {
        this.plan = plan;
        board = Circuit.of(plan, faults);
        quiet = board.quiet().low();
        session = Session.of(plan);
        hear(new ProbeEvent.Found(new Identity(1, "0.1.0", "ATmega32U4", 26, 16_000_000), "port"));
        hear(new ProbeEvent.WholeState(0, quiet));
        tell(new Action.QuietCheckDone());
    }

    /** The keys, by index, in the order of a person who slips once in so many. */
    public static List<Integer> fingers(Random random, Plan plan, int keysASlip) {
        List<Integer> order = new ArrayList<>();
        int keys = plan.keys().size();
        for (int key = 0; key < keys; key++) {
            if (random.nextInt(keysASlip) > 0) {
                order.add(key);
                continue;
            }
            switch (Slip.values()[random.nextInt(Slip.values().length)]) {
                case LEFT_OUT -> {}
                case TWICE -> order.addAll(List.of(key, key));
                case NEIGHBOUR_INSTEAD -> {
                    List<Integer> near = neighbours(plan, plan.keys().get(key));
                    order.add(near.get(random.nextInt(near.size())));
                }
                case EXCHANGED_WITH_THE_NEXT -> {
                    if (key + 1 < keys) {
                        order.add(key + 1);
                    }
                    order.add(key++);
                }
            }
        }
        return order;
    }

    /** The four nearest keys. */
    static List<Integer> neighbours(Plan plan, Key key) {
        return plan.keys().stream()
                .filter(other -> !other.equals(key))
                .sorted(Comparator.comparingDouble(other -> Math.hypot(
                        other.place().middle() - key.place().middle(),
                        other.place().y() - key.place().y())))
                .limit(4)
                .map(Key::index)
                .toList();
    }

    /** Everything from the beginning to the end of a read-through. */
    public Session readThrough(List<Integer> order) {
        tell(new Action.ReadThroughBegun());
        order.forEach(this::press);
        tell(new Action.ReadThroughEnded());
        return session;
    }

    public void press(int key) {
        micros += MICROS_A_PRESS;
        List<Pair> closed = answer(key).list();
        closed.forEach(pair -> hear(new ProbeEvent.Closed(micros, pair)));
        micros += MICROS_HELD;
        closed.forEach(pair -> hear(new ProbeEvent.Opened(micros, pair)));
    }

    /** Calls a key, as the findings ask, and says when nothing came. */
    void pressCalled(int key) {
        if (answer(key).isEmpty()) {
            tell(new Action.NothingCame(key));
        } else {
            tell(new Action.Called(key));
            press(key);
        }
    }

    public Session session() {
        return session;
    }

    private Pairs answer(int key) {
        return board.pressed(plan.keys().get(key)).low().minus(quiet);
    }

    void tell(Action action) {
        session = session.after(new Event.ByPerson(micros / 1000, action));
    }

    private void hear(ProbeEvent event) {
        session = session.after(new Event.FromProbe(micros / 1000, event));
    }
}
