package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Circuit;
import buzzout.circuit.Pair;
import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Engine;
import buzzout.plan.Plan;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Session;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A session that is left on for eight hours, with two presses a second: 8 times 600 presses, and 8 times 7,200 with
 * {@code -Dbuzzout.campaign=full}. Heap and frames are those of the whole live path but the log: session, event lines,
 * diagnosis, screen.
 */
class LongSessionTest {
    private static final int HOURS = 8;
    private static final int PRESSES_AN_HOUR = "full".equals(System.getProperty("buzzout.campaign")) ? 7_200 : 600;
    private static final int MOST_BYTES_A_PRESS = 400;
    /** What the runtime itself may take meanwhile. */
    private static final int SLACK = 1_000_000;

    private static final long SEED = 3;

    private final Plan plan = Views.QUAYSIDE;
    private final Engine engine = new Engine(plan);
    private Session session = Session.of(plan);
    private EventLines lines = EventLines.NONE;

    @Test
    void eight_hours_of_presses_cost_a_little_memory_each() throws IOException {
        Random random = new Random(SEED);
        take(new Event.FromProbe(1, new ProbeEvent.Found(Sitting.PROBE, "/dev/ttyACM0")));
        take(new Event.FromProbe(
                1, new ProbeEvent.WholeState(0, Circuit.of(plan).quiet().low())));
        take(new Event.ByPerson(1_500, new Action.QuietCheckDone()));
        long micros = 2_000_000;
        long[] heap = new long[HOURS + 1];
        StringBuilder frames = new StringBuilder();
        try (Paper paper = Paper.on(new DefaultVirtualTerminal(new TerminalSize(80, 24)), true)) {
            for (int hour = 0; hour <= HOURS; hour++) {
                long drawing = 0;
                for (int press = 0; press < PRESSES_AN_HOUR; press++) {
                    micros += 500_000;
                    press(random.nextInt(plan.keys().size()), micros);
                    drawing += drawn(paper, engine.glance(session.evidence()));
                }
                heap[hour] = used();
                frames.append(hour == 0 ? "" : ", ").append(drawing / PRESSES_AN_HOUR / 1_000);
            }
        }
        long each = (heap[HOURS] - heap[0]) / ((long) HOURS * PRESSES_AN_HOUR);
        System.out.println("figure: eight hours after the first, " + PRESSES_AN_HOUR + " presses an hour, heap | "
                + heap[0] / 1_000 + " kB, then " + heap[HOURS] / 1_000 + " kB, " + each + " bytes a press | at most "
                + MOST_BYTES_A_PRESS + " bytes a press, and 1 MB for the runtime");
        System.out.println("figure: the same, mean time of a frame in each hour, in µs | " + frames + " | steady");
        long most = (long) HOURS * PRESSES_AN_HOUR * MOST_BYTES_A_PRESS + SLACK;
        assertTrue(heap[HOURS] - heap[0] <= most, each + " bytes a press, seed " + SEED);
    }

    private void press(int index, long micros) {
        Pair pair =
                new Pair(plan.keys().get(index).row(), plan.keys().get(index).column());
        take(new Event.FromProbe(micros / 1_000, new ProbeEvent.Closed(micros, pair)));
        take(new Event.FromProbe(micros / 1_000 + 90, new ProbeEvent.Opened(micros + 90_000, pair)));
    }

    private void take(Event event) {
        Session after = session.after(event);
        lines = lines.after(session, event, after);
        session = after;
    }

    private long drawn(Paper paper, Diagnosis diagnosis) throws IOException {
        long start = System.nanoTime();
        Setting setting = new Setting(Optional.of("Q-01"), Optional.empty(), Views.FULL, true);
        View view = View.of(setting, new Snapshot(session, diagnosis, lines), Focus.FIRST);
        paper.show(Page.painted(view, paper.size()));
        return System.nanoTime() - start;
    }

    private static long used() {
        for (int again = 0; again < 3; again++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
