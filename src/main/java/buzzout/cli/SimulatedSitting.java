package buzzout.cli;

import buzzout.circuit.Fault;
import buzzout.journal.LogNotWritten;
import buzzout.plan.Plan;
import buzzout.probe.ProbeEvent;
import buzzout.probe.ProbeTalk;
import buzzout.probe.SimulatedBoard;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Session;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** A whole session on a simulated board in simulated time; nothing waits, and the same seed gives the same events. */
final class SimulatedSitting implements PressThrough.Place {
    /** Fine enough for time stamps in milliseconds. */
    private static final int STEP_MILLIS = 1;

    private final Bench bench;
    private final SimulatedBoard board;
    private final ProbeTalk talk;

    private SimulatedSitting(Plan plan, Collection<Fault> faults, long seed, Bench bench) {
        this.bench = bench;
        board = SimulatedBoard.inSimulatedTime(plan, faults, seed);
        talk = new ProbeTalk(plan, board);
    }

    static void play(Plan plan, Collection<Fault> faults, long seed, PressThrough.Way way, Bench bench)
            throws LogNotWritten, InterruptedException {
        play(plan, faults, seed, way, PressThrough.NONE, bench);
    }

    /** The same, with a key that a slip of the finger leaves out. */
    static void play(Plan plan, Collection<Fault> faults, long seed, PressThrough.Way way, int leftOut, Bench bench)
            throws LogNotWritten, InterruptedException {
        SimulatedSitting sitting = new SimulatedSitting(plan, faults, seed, bench);
        new PressThrough(plan, sitting.board, sitting, way, leftOut).run();
        sitting.tell(new Action.Ended());
        bench.finish();
    }

    @Override
    public boolean pass(int millis) throws InterruptedException {
        for (int passed = 0; passed < millis; passed += STEP_MILLIS) {
            List<Event> events = new ArrayList<>();
            for (ProbeEvent event : talk.runFor(STEP_MILLIS)) {
                events.add(new Event.FromProbe(now(), event));
            }
            bench.take(events);
            bench.passTime(now());
        }
        return true;
    }

    @Override
    public void tell(Action action) {
        bench.take(List.of(new Event.ByPerson(now(), action)));
    }

    @Override
    public Session session() {
        return bench.now().session();
    }

    private long now() {
        return board.time().micros() / 1000;
    }
}
