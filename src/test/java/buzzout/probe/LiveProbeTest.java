package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Pair;
import buzzout.plan.Key;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** In real time; nothing is waited for longer than it takes. */
class LiveProbeTest {
    private static final Key K6 = TestBoard.key("K6");

    private final BlockingQueue<ProbeEvent> events = new LinkedBlockingQueue<>();
    private final BlockingQueue<Throwable> failures = new LinkedBlockingQueue<>();
    private final SimulatedBoard board = SimulatedBoard.inRealTime(TestBoard.plan(), List.of(), 1);

    @Test
    void hands_events_on_through_a_press_and_a_replug() throws Exception {
        try (LiveProbe probe = LiveProbe.start(TestBoard.plan(), board, SettleTime.USUAL, events::add, failures::add)) {
            next(ProbeEvent.Found.class);
            next(ProbeEvent.WholeState.class);
            board.press(K6);
            assertEquals(new Pair(1, 4), next(ProbeEvent.Closed.class).pair());
            board.unplug();
            next(ProbeEvent.LinkLost.class);
            board.replug();
            next(ProbeEvent.Found.class);
            untilConducts(new Pair(1, 4));
            assertTrue(probe.isRunning());
        }
    }

    @Test
    void ends_its_thread_and_its_link_when_closed() throws Exception {
        LiveProbe probe = LiveProbe.start(TestBoard.plan(), board, SettleTime.USUAL, events::add, failures::add);
        next(ProbeEvent.WholeState.class);
        probe.close();

        assertFalse(probe.isRunning());
        assertTrue(board.isLeft());
    }

    @Test
    void says_so_when_the_program_itself_fails() throws Exception {
        LinkSource faulty = () -> {
            throw new IllegalStateException("a fault of ours");
        };
        LiveProbe probe = LiveProbe.start(TestBoard.plan(), faulty, SettleTime.USUAL, events::add, failures::add);
        assertEquals("a fault of ours", failures.poll(10, TimeUnit.SECONDS).getMessage());
        probe.close();
        assertFalse(probe.isRunning());
    }

    /** The contact may still bounce: then the whole state lacks the pair, and its closing follows. */
    private void untilConducts(Pair pair) throws InterruptedException {
        while (true) {
            ProbeEvent event = next(ProbeEvent.class);
            boolean whole = event instanceof ProbeEvent.WholeState state
                    && state.pairs().contains(pair);
            boolean closed =
                    event instanceof ProbeEvent.Closed change && change.pair().equals(pair);
            if (whole || closed) {
                return;
            }
        }
    }

    private <T extends ProbeEvent> T next(Class<T> kind) throws InterruptedException {
        while (true) {
            ProbeEvent event = events.poll(10, TimeUnit.SECONDS);
            assertTrue(event != null, () -> kind.getSimpleName() + " never came");
            if (kind.isInstance(event)) {
                return kind.cast(event);
            }
        }
    }
}
