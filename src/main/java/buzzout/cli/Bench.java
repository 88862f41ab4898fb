package buzzout.cli;

import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Engine;
import buzzout.journal.Journal;
import buzzout.journal.LogNotWritten;
import buzzout.plan.Plan;
import buzzout.screen.EventLines;
import buzzout.screen.Snapshot;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Evidence;
import buzzout.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * A session as it happens: each event goes into the journal, then into the session. Where the journal cannot be written,
 * the session goes on, and what is unwritten is tried again. One thread gives it events, one may weigh the evidence
 * meanwhile, one see to the disk, and any may ask what is known now.
 */
class Bench {
    private final Journal journal;
    private final Plan plan;
    private final QuietCheck quietCheck = new QuietCheck();
    private final Calling calling = new Calling();
    private final List<Event> unwritten = new ArrayList<>();
    private final Semaphore news = new Semaphore(0);
    private volatile Snapshot now;
    /** Why something written may never have reached the disk, since it first did not. */
    private volatile Optional<LogNotWritten> unsafe = Optional.empty();

    private List<Action> afterQuietCheck;

    // What follows belongs to the thread that weighs.
    private Evidence weighed = Evidence.NONE;
    /** The last session that was seen to hold the evidence that is weighed, and no more. */
    private Session known;
    /** Whether anything came while it pondered, even if it was taken back at once. */
    private boolean hasNews;
    /** Made when there is something to weigh: the first frame need not wait for it. */
    private Optional<Engine> engine = Optional.empty();

    Bench(LoadedPlan loaded, Journal journal) {
        this(loaded, journal, Past.NONE, List.of());
    }

    /**
     * @param past what the journal holds already
     * @param afterQuietCheck what the person said in advance, for when the next quiet check is over
     */
    Bench(LoadedPlan loaded, Journal journal, Past past, List<Action> afterQuietCheck) {
        this.journal = journal;
        this.plan = loaded.plan();
        this.now = Snapshot.of(loaded.plan());
        this.known = now.session();
        this.afterQuietCheck = afterQuietCheck;
        show(past.events(), Optional.empty());
    }

    Snapshot now() {
        return now;
    }

    /** Waits until something new has become known since it was last waited for, but no longer than so many milliseconds. */
    void awaitNews(long mostMillis) throws InterruptedException {
        if (news.tryAcquire(mostMillis, TimeUnit.MILLISECONDS)) {
            news.drainPermits();
        }
    }

    /** Takes events in; then they are in the log's file, or a warning says that they are not, and why. */
    void take(List<Event> events) {
        if (events.isEmpty()) {
            return;
        }
        show(events, written(events).or(() -> unsafe).map(LogNotWritten::sentence));
    }

    /** Writes down events that no session takes in any more; what could not be written is tried again. */
    void onlyWrite(List<Event> events) {
        if (!events.isEmpty()) {
            written(events);
        }
    }

    private void show(List<Event> events, Optional<String> warning) {
        Session session = now.session();
        EventLines lines = now.events();
        for (Event event : events) {
            Session after = session.after(event);
            lines = lines.after(session, event, after);
            quietCheck.after(after, event);
            calling.after(event);
            session = after;
        }
        synchronized (this) {
            now = new Snapshot(session, now.diagnosis(), lines, warning);
        }
        news.release();
    }

    /** Lets the time be so many milliseconds since the session began: the quiet check may be over, or a call due. */
    void passTime(long nowMillis) {
        if (quietCheck.isOver(nowMillis)) {
            List<Event> events = new ArrayList<>();
            events.add(new Event.ByPerson(nowMillis, new Action.QuietCheckDone()));
            afterQuietCheck.forEach(action -> events.add(new Event.ByPerson(nowMillis, action)));
            afterQuietCheck = List.of();
            take(events);
        }
        calling.due(now.session(), nowMillis).ifPresent(call -> take(List.of(new Event.ByPerson(nowMillis, call))));
    }

    /** Has the system put on the disk what was written; no press waits for that. */
    void sync() {
        try {
            journal.sync();
        } catch (LogNotWritten e) {
            unsafe = Optional.of(e);
            synchronized (this) {
                now = new Snapshot(now.session(), now.diagnosis(), now.events(), Optional.of(e.sentence()));
            }
            news.release();
        }
    }

    /** Weighs the evidence at a glance, where there is any that is new. */
    void glance() {
        known = now.session();
        Evidence evidence = known.evidence();
        if (!evidence.equals(weighed)) {
            weighed = evidence;
            show(engine().glance(evidence));
        }
    }

    /**
     * Weighs as thoroughly as is needed what was glanced at, unless something new comes meanwhile. Says whether all that
     * is in the session is weighed.
     */
    boolean ponder() {
        if (isRough()) {
            hasNews = false;
            engine().ponder(weighed, () -> hasNews |= isOvertaken()).ifPresent(this::show);
        }
        return !isOvertaken() && !isRough();
    }

    private boolean isRough() {
        return engine.isPresent() && engine.get().isRough();
    }

    private Engine engine() {
        Engine made = engine.orElseGet(() -> new Engine(plan));
        engine = Optional.of(made);
        return made;
    }

    /** Asked thousands of times a second, hence first whether anything came at all. */
    @SuppressWarnings("ReferenceEquality")
    private boolean isOvertaken() {
        Session session = now.session();
        if (session != known && session.evidence().equals(weighed)) {
            known = session;
        }
        return session != known;
    }

    /** Both. */
    boolean weigh() {
        glance();
        return ponder();
    }

    private void show(Diagnosis diagnosis) {
        synchronized (this) {
            now = new Snapshot(now.session(), diagnosis, now.events(), now.warning());
        }
        news.release();
    }

    /** Tries once more to write down what could not be written, and puts everything on the disk. */
    void finish() throws LogNotWritten {
        write();
        journal.sync();
        if (unsafe.isPresent()) {
            throw unsafe.get();
        }
    }

    private void write() throws LogNotWritten {
        if (!unwritten.isEmpty()) {
            journal.append(unwritten);
            unwritten.clear();
        }
    }

    private Optional<LogNotWritten> written(List<Event> events) {
        unwritten.addAll(events);
        try {
            write();
            return Optional.empty();
        } catch (LogNotWritten e) {
            return Optional.of(e);
        }
    }
}
