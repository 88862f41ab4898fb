package buzzout.cli;

import buzzout.journal.LogNotWritten;
import buzzout.plan.Joint;
import buzzout.probe.ProbeEvent;
import buzzout.screen.Request;
import buzzout.screen.Snapshot;
import buzzout.screen.Source;
import buzzout.session.Action;
import buzzout.session.Combinations;
import buzzout.session.Event;
import buzzout.session.KeyState;
import buzzout.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;

/**
 * A bench in real time: one queue of what the probe and the person did, one thread that takes it in, one that puts it on
 * the disk, and one that weighs it.
 */
final class LiveBench implements Source {
    private static final int MILLIS_A_LOOK = 50;
    private static final int MOST_AT_ONCE = 1_000;
    /** A key that chatters would have the evidence weighed without end; no more often is its frame drawn either. */
    private static final int MILLIS_BETWEEN_GLANCES = 8;
    /** So long the hands rest before a thorough look is worth its beginning. */
    private static final int MILLIS_AT_REST = 15;

    private final Bench bench;
    private final BoardHands hands;
    private final TouchCalls touchCalls = new TouchCalls();
    private final BlockingQueue<Event> queue = new LinkedBlockingQueue<>();
    private final Past past;
    private final long startNanos = System.nanoTime();
    private final Semaphore unweighed = new Semaphore(0);
    /** What a log begins with is to be put on the disk too. */
    private final Semaphore unsynced = new Semaphore(1);

    private final Thread taking = new Thread(guarded(this::takeAll), "bench");
    private final Thread weighing = new Thread(guarded(this::weighAll), "diagnosis");
    private final Thread syncing = new Thread(guarded(this::syncAll), "disk");
    private final AtomicLong given = new AtomicLong();
    private final AtomicLong taken = new AtomicLong();
    private volatile Optional<Throwable> failure = Optional.empty();
    private volatile boolean ended;

    private LiveBench(Bench bench, Past past, BoardHands hands) {
        this.bench = bench;
        this.past = past;
        this.hands = hands;
        taking.setDaemon(true);
        weighing.setDaemon(true);
        syncing.setDaemon(true);
    }

    /** Starts to take events in; the hands do to a simulated board what the person asks. */
    static LiveBench start(Bench bench, BoardHands hands) {
        return start(bench, Past.NONE, hands);
    }

    /** The same, in a session that goes on. */
    static LiveBench start(Bench bench, Past past, BoardHands hands) {
        LiveBench live = new LiveBench(bench, past, hands);
        live.taking.start();
        live.weighing.start();
        live.syncing.start();
        return live;
    }

    /** The program failed within; whoever draws ends with it. */
    static final class Stopped extends IllegalStateException {
        private static final long serialVersionUID = 1;

        Stopped(Throwable cause) {
            super(cause);
        }
    }

    /** A thread of the session's failed; whoever draws ends with it, and only the log goes on. */
    void fail(Throwable cause) {
        if (failure.isEmpty()) {
            failure = Optional.of(cause);
        }
    }

    void hear(ProbeEvent event) {
        add(new Event.FromProbe(millis(), past.countedOn(event)));
    }

    void tell(Action action) {
        add(new Event.ByPerson(millis(), action));
    }

    @Override
    public Snapshot now() {
        failure.ifPresent(cause -> {
            throw new Stopped(cause);
        });
        return bench.now();
    }

    @Override
    public void awaitNews(long mostMillis) throws InterruptedException {
        bench.awaitNews(mostMillis);
    }

    @Override
    public void ask(Request request) {
        if (request instanceof Request.NothingCame nothing) {
            tell(new Action.NothingCame(nothing.key()));
        } else if (request instanceof Request.AllPressed) {
            tell(new Action.AllPressed());
        } else if (request instanceof Request.BeginReadThrough) {
            tell(new Action.ReadThroughBegun());
        } else if (request instanceof Request.EndReadThrough) {
            tell(new Action.ReadThroughEnded());
        } else if (request instanceof Request.TakeBack) {
            takeBack();
        } else if (request instanceof Request.NameTouch) {
            nameTouch();
        } else if (request instanceof Request.MetNothing nothing) {
            tell(new Action.TouchedNothing(nothing.joint()));
        } else if (request instanceof Request.Touch touch) {
            hands.touch(touch.joint());
        } else if (request instanceof Request.BeginRollCall) {
            tell(new Action.RollCallBegun());
        } else if (request instanceof Request.LeaveRollCall) {
            tell(new Action.RollCallLeft());
        } else if (request instanceof Request.Repaired repaired) {
            tell(new Action.Repaired(repaired.code(), repaired.orAlike()));
            hands.repair(
                    Stream.concat(Stream.of(repaired.code()), repaired.orAlike().stream())
                            .toList(),
                    this);
        } else if (request instanceof Request.Press press) {
            press(press.key());
        } else if (request instanceof Request.FlexCheck) {
            hands.letGo();
            boolean on = session().flex().on();
            tell(on ? new Action.FlexOver() : new Action.FlexBegun());
        } else if (request instanceof Request.AllAtOnce) {
            hands.letGo();
            tell(new Action.CalledTogether(session().allAtOnce().isOn() ? List.of() : combinations()));
        }
    }

    private void press(int key) {
        if (session().flex().on()) {
            hands.holdOrLetGo(key);
        } else if (session().allAtOnce().isOn()) {
            hands.holdTogether(session().allAtOnce().called());
        } else {
            hands.press(key, this);
        }
    }

    /** Of the keys that are good, and of those not tried yet: one that does not answer proves nothing in company. */
    private List<Set<Integer>> combinations() {
        List<KeyState> states = session().states();
        Set<Integer> usable = new TreeSet<>();
        for (int key = 0; key < states.size(); key++) {
            if (states.get(key) == KeyState.GOOD || states.get(key) == KeyState.UNTESTED) {
                usable.add(key);
            }
        }
        return Combinations.proving(session().plan(), usable);
    }

    private Session session() {
        return bench.now().session();
    }

    void takeBack() {
        touchCalls.stop();
        tell(new Action.TakenBack());
    }

    /** Asks for the touch that tells most; says whether there is one. */
    boolean nameTouch() {
        Optional<Joint> joint = touchCalls.wanted(bench.now());
        joint.ifPresent(each -> tell(new Action.TouchCalled(each)));
        return joint.isPresent();
    }

    /**
     * Ends the session, waits for its last event and returns what is known then.
     *
     * @throws LogNotWritten if something of the session is still not on the disk
     */
    Snapshot end() throws LogNotWritten, InterruptedException {
        tell(new Action.Ended());
        stop();
        return now();
    }

    /**
     * Waits until all that was heard and told is in the log, and takes nothing more.
     *
     * @throws LogNotWritten if something of the session is still not on the disk
     */
    void stop() throws LogNotWritten, InterruptedException {
        ended = true;
        taking.join();
        bench.finish();
    }

    /** Whether everything that was heard and told is in the session. */
    boolean isUpToDate() {
        return taken.get() == given.get();
    }

    /** What a thread of the session's does. */
    interface Work {
        void run() throws InterruptedException;
    }

    /** The same, so that the session ends and tells why when it fails. */
    Runnable guarded(Work work) {
        return () -> {
            try {
                work.run();
            } catch (Stopped alreadyKnown) {
                // The bench has stopped, and tells the person why.
                return;
            } catch (RuntimeException | Error e) {
                fail(e);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        };
    }

    private void takeAll() throws InterruptedException {
        while (!(ended && queue.isEmpty())) {
            List<Event> events = new ArrayList<>();
            Event first = queue.poll(MILLIS_A_LOOK, TimeUnit.MILLISECONDS);
            if (first != null) {
                events.add(first);
                queue.drainTo(events, MOST_AT_ONCE);
            }
            guarded(() -> take(events)).run();
            taken.addAndGet(events.size());
            unsynced.release();
            unweighed.release();
        }
    }

    private void take(List<Event> events) {
        if (failure.isPresent()) {
            bench.onlyWrite(events);
        } else {
            bench.take(events);
            bench.passTime(millis());
        }
    }

    private void syncAll() throws InterruptedException {
        while (true) {
            unsynced.acquire();
            unsynced.drainPermits();
            bench.sync();
        }
    }

    private void weighAll() throws InterruptedException {
        while (true) {
            unweighed.acquire();
            do {
                unweighed.drainPermits();
                bench.glance();
                Thread.sleep(MILLIS_BETWEEN_GLANCES);
            } while (unweighed.tryAcquire(MILLIS_AT_REST, TimeUnit.MILLISECONDS));
            if (bench.ponder() && isUpToDate()) {
                touchCalls.afterWeighing(bench.now()).ifPresent(joint -> tell(new Action.TouchCalled(joint)));
            }
        }
    }

    private void add(Event event) {
        given.incrementAndGet();
        queue.add(event);
    }

    /** Milliseconds since the session began. */
    long millis() {
        return past.millis() + (System.nanoTime() - startNanos) / 1_000_000;
    }
}
