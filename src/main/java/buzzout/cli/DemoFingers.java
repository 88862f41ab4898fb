package buzzout.cli;

import buzzout.circuit.Fault;
import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.SimulatedBoard;
import buzzout.session.Action;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.Timer;
import java.util.TimerTask;

/** Presses a simulated board's keys in real time, until the person takes it over; then they do what the person asks. */
final class DemoFingers implements BoardHands {
    private static final int HELD_MILLIS = 120;
    private static final int TOGETHER_MILLIS = 400;
    private static final int TOUCHED_MILLIS = 700;

    /** By then an answer would have come. */
    private static final int ANSWER_MILLIS = 300;

    /** Long enough to read what to do before it is done. */
    private static final int READING_MILLIS = 2_500;

    private final Plan plan;
    private final SimulatedBoard board;
    private final PressThrough.Way way;
    private final int leftOut;
    private final Timer later = new Timer("fingers' next moves", true);
    /** Only the screen's thread asks for keys to be held. */
    private final Set<Integer> held = new HashSet<>();

    private volatile List<Fault> faults;
    private volatile boolean personPresses;

    DemoFingers(Plan plan, SimulatedBoard board, List<Fault> faults, PressThrough.Way way, int leftOut) {
        this.plan = plan;
        this.board = board;
        this.faults = List.copyOf(faults);
        this.way = way;
        this.leftOut = leftOut;
    }

    @Override
    public void holdTogether(Set<Integer> keys) {
        personPresses = true;
        keys.forEach(key -> board.press(plan.keys().get(key)));
        after(
                TOGETHER_MILLIS,
                () -> keys.forEach(key -> board.release(plan.keys().get(key))));
    }

    @Override
    public void holdOrLetGo(int key) {
        personPresses = true;
        if (held.remove(key)) {
            board.release(plan.keys().get(key));
        } else {
            held.add(key);
            board.press(plan.keys().get(key));
        }
    }

    @Override
    public void letGo() {
        personPresses = true;
        held.forEach(key -> board.release(plan.keys().get(key)));
        held.clear();
    }

    /** Begins to press every key; in a roll call that is left to the person. */
    void begin(LiveBench bench, boolean rollCall) {
        if (rollCall) {
            bench.tell(new Action.RollCallBegun());
            return;
        }
        Thread thread = new Thread(bench.guarded(() -> pressAll(bench)), "fingers");
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void press(int key, LiveBench bench) {
        personPresses = true;
        Key pressed = plan.keys().get(key);
        int before = bench.now().session().presses().size();
        board.press(pressed);
        after(HELD_MILLIS, () -> board.release(pressed));
        after(ANSWER_MILLIS, bench.guarded(() -> {
            if (bench.now().session().presses().size() == before) {
                bench.tell(new Action.Noted(pressed.spoken() + " was pressed and nothing came: type n"));
            }
        }));
    }

    @Override
    public void touch(Joint joint) {
        personPresses = true;
        board.touch(joint);
        after(TOUCHED_MILLIS, board::lift);
    }

    @Override
    public void repair(List<String> codes, LiveBench bench) {
        after(READING_MILLIS, bench.guarded(() -> {
            if (bench.now().session().stage() == Stage.REPAIRING) {
                board.unplug();
                faults = faults.stream()
                        .filter(fault -> !codes.contains(fault.code(plan)))
                        .toList();
                board.setFaults(faults);
                after(READING_MILLIS, board::replug);
            }
        }));
    }

    private void after(int millis, Runnable move) {
        TimerTask task = new TimerTask() {
            @Override
            public void run() {
                move.run();
            }
        };
        later.schedule(task, millis);
    }

    private void pressAll(LiveBench bench) throws InterruptedException {
        new PressThrough(plan, board, new RealTime(bench), way, leftOut).run();
    }

    private final class RealTime implements PressThrough.Place {
        private final LiveBench bench;

        RealTime(LiveBench bench) {
            this.bench = bench;
        }

        @Override
        public boolean pass(int millis) throws InterruptedException {
            Thread.sleep(millis);
            while (!bench.isUpToDate()) {
                Thread.sleep(1);
            }
            boolean taken = session().rollCall().isPresent() || session().stage() == Stage.REPAIRING;
            return !personPresses && !taken;
        }

        @Override
        public void tell(Action action) {
            bench.tell(action);
        }

        @Override
        public Session session() {
            return bench.now().session();
        }
    }
}
