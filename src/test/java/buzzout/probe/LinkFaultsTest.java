package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.KeyState;
import buzzout.session.Session;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A bench is a rough place; what was counted on both sides is printed. {@code -Dbuzzout.campaign=full} does more. */
class LinkFaultsTest {
    private static final int UNPLUGS = "full".equals(System.getProperty("buzzout.campaign")) ? 100 : 20;
    private static final long SEED = 11;

    private final Plan plan = TestBoard.plan();

    @Test
    void unplugged_and_replugged_in_the_middle_of_presses_it_goes_on_and_no_key_is_blamed() throws Exception {
        Random random = new Random(SEED);
        SimulatedBoard board = SimulatedBoard.inSimulatedTime(plan, List.of(), SEED);
        CountingWire wire = new CountingWire(board);
        try (Play play = new Play(wire)) {
            play.first(ProbeEvent.WholeState.class);
            for (int round = 0; round < UNPLUGS; round++) {
                Key key = plan.keys().get(random.nextInt(plan.keys().size()));
                board.press(key);
                play.pass(random.nextInt(1, 40));
                int before = play.events().size();
                board.unplug();
                play.first(ProbeEvent.LinkLost.class, before);
                boolean heldOn = random.nextBoolean();
                if (!heldOn) {
                    board.release(key);
                }
                play.pass(random.nextInt(10, 3_000));
                board.replug();
                play.first(ProbeEvent.WholeState.class, before);
                play.untilNow(heldOn ? Pairs.of(new Pair(key.row(), key.column())) : Pairs.NONE);
                board.release(key);
                play.untilNow(Pairs.NONE);
                play.pass(60);
            }
            long lost = count(play, ProbeEvent.LinkLost.class);
            long found = count(play, ProbeEvent.Found.class);
            long changes = count(play, ProbeEvent.Closed.class) + count(play, ProbeEvent.Opened.class);
            assertTrue(lost >= UNPLUGS, "each is told, and then why it cannot be opened: " + lost);
            assertEquals(UNPLUGS + 1, found);
            assertEquals(Play.times(play.events()).stream().sorted().toList(), Play.times(play.events()));
            Session session = play.session();
            assertEquals(
                    Set.of(),
                    others(session, EnumSet.of(KeyState.GOOD, KeyState.UNTESTED)),
                    "seed " + SEED + ": " + session.states());
            assertTrue(session.count(KeyState.GOOD) > 0);
            assertEquals(wire.changes(), changes + session.lostChanges(), "each change sent was heard or is counted");
            System.out.printf(
                    "figure: unplugged and replugged in a press, %d times | %d changes sent, %d heard, %d counted as lost; 0"
                            + " keys blamed | heard + lost = sent%n",
                    UNPLUGS, wire.changes(), changes, session.lostChanges());
        }
    }

    @Test
    void a_device_that_answers_nonsense_is_never_taken_for_a_probe_and_every_line_is_counted() throws Exception {
        SimulatedBoard board = SimulatedBoard.inSimulatedTime(plan, List.of(), SEED);
        Nonsense device = new Nonsense(board, new Random(SEED));
        try (Play play = new Play(device)) {
            play.pass(30_000);
            device.hush();
            play.pass(2_000);
            long garbled = play.events().stream()
                    .filter(ProbeEvent.Garbled.class::isInstance)
                    .mapToLong(event -> ((ProbeEvent.Garbled) event).lines())
                    .sum();
            assertEquals(0, count(play, ProbeEvent.Found.class) + count(play, ProbeEvent.Closed.class));
            assertEquals(
                    device.garbage() - device.opened(), garbled, "all but the first on each link, which may be cut");
            assertTrue(
                    play.events().size() < 300,
                    "told at a calm pace: " + play.events().size());
            System.out.printf(
                    "figure: a device that talks nonsense for 30 s | %d lines sent, %d counted (the first may be cut), %d"
                            + " events; no probe found | sent - 1 = counted%n",
                    device.garbage(), garbled, play.events().size());
        }
    }

    private static Set<KeyState> others(Session session, Set<KeyState> allowed) {
        Set<KeyState> states = EnumSet.noneOf(KeyState.class);
        states.addAll(session.states());
        states.removeAll(allowed);
        return states;
    }

    private static long count(Play play, Class<? extends ProbeEvent> kind) {
        return play.events().stream().filter(kind::isInstance).count();
    }

    /** Counts what the probe says on its way. */
    private static class CountingWire implements LinkSource {
        private final LinkSource source;
        private int changes;

        CountingWire(LinkSource source) {
            this.source = source;
        }

        int changes() {
            return changes;
        }

        @Override
        public Stopwatch time() {
            return source.time();
        }

        @Override
        public Opened open() throws LinkDown {
            Opened opened = source.open();
            LineDecoder decoder = new LineDecoder();
            return new Opened(opened.port(), new ByteLink() {
                @Override
                public int read(byte[] into, int timeoutMillis) throws LinkDown {
                    int count = opened.link().read(into, timeoutMillis);
                    for (Received received : decoder.take(into, count)) {
                        if (received instanceof Received.Good line
                                && ProbeMessages.parse(line.body()) instanceof ProbeMessage.Change) {
                            changes++;
                        }
                    }
                    return count;
                }

                @Override
                public void write(byte[] bytes) throws LinkDown {
                    opened.link().write(bytes);
                }

                @Override
                public void close() {
                    opened.link().close();
                }
            });
        }
    }

    /** Says anything but what a probe says, as fast as it is read, and hears nothing. */
    private static final class Nonsense implements LinkSource {
        private final LinkSource source;
        private final Random random;
        private boolean noisy = true;
        private int opened;
        private int garbage;

        Nonsense(LinkSource source, Random random) {
            this.source = source;
            this.random = random;
        }

        void hush() {
            noisy = false;
        }

        int opened() {
            return opened;
        }

        int garbage() {
            return garbage;
        }

        @Override
        public Stopwatch time() {
            return source.time();
        }

        @Override
        public Opened open() throws LinkDown {
            Opened link = source.open();
            LineDecoder decoder = new LineDecoder();
            opened++;
            return new Opened(link.port(), new ByteLink() {
                @Override
                public int read(byte[] into, int timeoutMillis) throws LinkDown {
                    byte[] unheard = new byte[into.length];
                    link.link().read(unheard, timeoutMillis);
                    if (!noisy) {
                        return 0;
                    }
                    byte[] said = new byte[random.nextInt(into.length)];
                    random.nextBytes(said);
                    System.arraycopy(said, 0, into, 0, said.length);
                    garbage += (int) decoder.take(said, said.length).stream()
                            .filter(Received.Garbage.class::isInstance)
                            .count();
                    return said.length;
                }

                @Override
                public void write(byte[] bytes) {
                    // It does not listen.
                }

                @Override
                public void close() {
                    link.link().close();
                }
            });
        }
    }
}
