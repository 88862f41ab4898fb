package buzzout.cli;

import buzzout.plan.Plan;
import buzzout.probe.SimulatedBoard;
import buzzout.session.Action;
import buzzout.session.Session;
import java.util.HashSet;
import java.util.Set;
import java.util.Timer;
import java.util.TimerTask;

/** Presses a simulated board's keys in real time, until the person presses one: then the board is theirs. */
final class DemoFingers implements Fingers {
    private static final int HELD_MILLIS = 120;
    private static final int TOGETHER_MILLIS = 400;

    private final Plan plan;
    private final SimulatedBoard board;
    private final Timer releases = new Timer("releases", true);
    /** Only the screen's thread asks for keys to be held. */
    private final Set<Integer> held = new HashSet<>();

    private volatile boolean personPresses;

    DemoFingers(Plan plan, SimulatedBoard board) {
        this.plan = plan;
        this.board = board;
    }

    @Override
    public void press(int key) {
        holdTogether(Set.of(key), HELD_MILLIS);
    }

    @Override
    public void holdTogether(Set<Integer> keys) {
        holdTogether(keys, TOGETHER_MILLIS);
    }

    private void holdTogether(Set<Integer> keys, int millis) {
        personPresses = true;
        keys.forEach(key -> board.press(plan.keys().get(key)));
        TimerTask release = new TimerTask() {
            @Override
            public void run() {
                keys.forEach(key -> board.release(plan.keys().get(key)));
            }
        };
        releases.schedule(release, millis);
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

    /** Begins to press every key. */
    void start(LiveBench bench) {
        Thread thread = new Thread(() -> pressAll(bench), "fingers");
        thread.setDaemon(true);
        thread.start();
    }

    private void pressAll(LiveBench bench) {
        try {
            new PressThrough(plan, board, new RealTime(bench), PressThrough.Way.TELLING).run();
        } catch (LiveBench.Stopped e) {
            // The bench has stopped, and tells the person why.
            return;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
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
            return !personPresses;
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
