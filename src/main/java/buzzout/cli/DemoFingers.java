package buzzout.cli;

import buzzout.plan.Plan;
import buzzout.probe.SimulatedBoard;
import buzzout.session.Action;
import buzzout.session.Session;
import java.util.Timer;
import java.util.TimerTask;

/** Presses a simulated board's keys in real time, until the person presses one: then the board is theirs. */
final class DemoFingers {
    private static final int HELD_MILLIS = 120;

    private final Plan plan;
    private final SimulatedBoard board;
    private final PressThrough.Way way;
    private final int leftOut;
    private final Timer releases = new Timer("releases", true);
    private volatile boolean personPresses;

    DemoFingers(Plan plan, SimulatedBoard board, PressThrough.Way way, int leftOut) {
        this.plan = plan;
        this.board = board;
        this.way = way;
        this.leftOut = leftOut;
    }

    /** Presses a key because the person asked for it. */
    void pressForPerson(int key) {
        personPresses = true;
        board.press(plan.keys().get(key));
        TimerTask release = new TimerTask() {
            @Override
            public void run() {
                board.release(plan.keys().get(key));
            }
        };
        releases.schedule(release, HELD_MILLIS);
    }

    /** Begins to press every key. */
    void start(LiveBench bench) {
        Thread thread = new Thread(() -> pressAll(bench), "fingers");
        thread.setDaemon(true);
        thread.start();
    }

    private void pressAll(LiveBench bench) {
        try {
            new PressThrough(plan, board, new RealTime(bench), way, leftOut).run();
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
