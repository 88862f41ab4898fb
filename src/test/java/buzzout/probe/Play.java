package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Pairs;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** A talk with a probe, and all events so far. Nothing is waited for longer than it takes, or 10 s of the probe's time. */
final class Play implements AutoCloseable {
    private static final long PATIENCE = 10_000_000;

    private final LinkSource source;
    private final ProbeTalk talk;
    private final List<ProbeEvent> events = new ArrayList<>();

    Play(LinkSource source) {
        this(source, SettleTime.USUAL);
    }

    Play(LinkSource source, SettleTime settle) {
        this.source = source;
        this.talk = new ProbeTalk(TestBoard.plan(), source, settle);
    }

    List<ProbeEvent> events() {
        return events;
    }

    /** The session that these events make, its quiet check over with the first whole state. */
    Session session() {
        Session session = Session.of(TestBoard.plan());
        boolean quiet = false;
        long millis = 0;
        for (ProbeEvent event : events) {
            session = session.after(new Event.FromProbe(millis++, event));
            if (!quiet && event instanceof ProbeEvent.WholeState) {
                session = session.after(new Event.ByPerson(millis++, new Action.QuietCheckDone()));
                quiet = true;
            }
        }
        return session;
    }

    void pass(int millis) throws InterruptedException {
        events.addAll(talk.runFor(millis));
    }

    /** The first event of a kind, from here on or from before. */
    <T extends ProbeEvent> T first(Class<T> kind) throws InterruptedException {
        return first(kind, 0);
    }

    /** The first event of a kind after so many others. */
    <T extends ProbeEvent> T first(Class<T> kind, int after) throws InterruptedException {
        until(happened -> happened.stream().skip(after).anyMatch(kind::isInstance), kind.getSimpleName());
        return events.stream()
                .skip(after)
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst()
                .orElseThrow();
    }

    /** Waits until exactly this conducts, bounces over. */
    void untilNow(Pairs wanted) throws InterruptedException {
        pass(50);
        until(happened -> now(happened).equals(wanted), wanted.toString());
    }

    private void until(Predicate<List<ProbeEvent>> wanted, String what) throws InterruptedException {
        long end = source.time().micros() + PATIENCE;
        while (!wanted.test(events)) {
            assertTrue(source.time().micros() < end, () -> what + " never came: " + events);
            pass(50);
        }
    }

    long count(Class<? extends ProbeEvent> kind) {
        return events.stream().filter(kind::isInstance).count();
    }

    /** How many changes were told one by one. */
    long told() {
        return count(ProbeEvent.Closed.class) + count(ProbeEvent.Opened.class);
    }

    /** How many changes were counted as lost. */
    long lost() {
        return events.stream()
                .mapToLong(event -> event instanceof ProbeEvent.Lost lost ? lost.changes() : 0)
                .sum();
    }

    /** What conducts after these events. */
    static Pairs now(List<ProbeEvent> events) {
        Pairs now = Pairs.NONE;
        for (ProbeEvent event : events) {
            if (event instanceof ProbeEvent.WholeState whole) {
                now = whole.pairs();
            } else if (event instanceof ProbeEvent.Closed closed) {
                now = now.with(closed.pair());
            } else if (event instanceof ProbeEvent.Opened opened) {
                now = now.without(opened.pair());
            }
        }
        return now;
    }

    /** The times that events carry, in their order. */
    static List<Long> times(List<ProbeEvent> events) {
        List<Long> times = new ArrayList<>();
        for (ProbeEvent event : events) {
            if (event instanceof ProbeEvent.WholeState whole) {
                times.add(whole.micros());
            } else if (event instanceof ProbeEvent.Closed closed) {
                times.add(closed.micros());
            } else if (event instanceof ProbeEvent.Opened opened) {
                times.add(opened.micros());
            }
        }
        return times;
    }

    @Override
    public void close() {
        talk.close();
    }
}
