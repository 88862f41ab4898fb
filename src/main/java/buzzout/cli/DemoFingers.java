package buzzout.cli;

import buzzout.plan.Joint;
import buzzout.plan.Plan;
import buzzout.probe.SimulatedBoard;
import buzzout.session.Action;
import buzzout.session.Session;
import java.util.Timer;
import java.util.TimerTask;

/** Presses a simulated board's keys in real time, until the person presses one: then the board is theirs. */
final class DemoFingers {
    private static final int HELD_MILLIS = 120;
    private static final int TOUCHED_MILLIS = 700;

    private final Plan plan;
    private final SimulatedBoard board;
    private final Timer releases = new Timer("releases", true);
    private volatile boolean personPresses;

    DemoFingers(Plan plan, SimulatedBoard board) {
        this.plan = plan;
        this.board = board;
    }

    /** Presses and touches because the person asked for it. */
    BoardHands ofPerson() {
        return new BoardHands() {
            @Override
            public void press(int key) {
                personPresses = true;
                board.press(plan.keys().get(key));
                after(HELD_MILLIS, () -> board.release(plan.keys().get(key)));
            }

            @Override
            public void touch(Joint joint) {
                personPresses = true;
                board.touch(joint);
                after(TOUCHED_MILLIS, board::lift);
            }
        };
    }

    private void after(int millis, Runnable then) {
        TimerTask task = new TimerTask() {
            @Override
            public void run() {
                then.run();
            }
        };
        releases.schedule(task, millis);
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
