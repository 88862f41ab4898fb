package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Fault;
import buzzout.circuit.Netlist;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.circuit.PinLow;
import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Engine;
import buzzout.e2e.Needs;
import buzzout.plan.Key;
import buzzout.plan.Place;
import buzzout.session.KeyState;
import buzzout.session.Session;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * The executed sketch behind a pty, with more changes than the link carries, a reader that stops, a wire that spoils
 * bytes; {@code -Dbuzzout.campaign=full} goes on for longer.
 */
@Timeout(900) // against hanging only
class SketchFloodTest {
    private static final boolean ALL = "full".equals(System.getProperty("buzzout.campaign"));
    private static final int FLOOD_MILLIS = ALL ? 60_000 : 400;
    private static final int STOPPED_MILLIS = ALL ? 10_000 : 2_000;
    private static final int NOISY_TAPS = ALL ? 600 : 30;

    /** What a sweep of the board's seven pins takes while there is nothing to say. */
    private static final int SWEEP_MICROS = 165;

    private static final long SEED = 12;
    private static final Key TO_GROUND =
            new Key(TestBoard.ROWS * TestBoard.COLUMNS, "ground", 0, 0, new Place(0, 0, 1));

    @TempDir
    Path folder;

    private final List<Key> keys = TestBoard.plan().keys();
    private final Random random = new Random(SEED);

    @BeforeAll
    static void needs_the_bench() throws IOException, InterruptedException {
        Needs.theSketchBench();
    }

    @Test
    void a_contact_that_chatters_at_the_sweeps_own_pace_is_told_or_counted_and_its_end_is_true() throws Exception {
        try (SketchBench bench = SketchBench.in(folder);
                Play play = new Play(bench.source())) {
            play.first(ProbeEvent.WholeState.class);
            int moves = flood(bench, play, TestBoard.key("K6"));
            goesOn(bench, play);
            figure("contact chatters every " + SWEEP_MICROS + " µs for " + FLOOD_MILLIS + " ms", moves, bench, play);
            assertEquals(bench.stats().count("noticed"), play.told() + play.lost());
            assertNoKeyIsBlamed(play.session());
        }
    }

    @Test
    void a_net_that_chatters_against_ground_is_told_or_counted_and_its_end_is_true() throws Exception {
        try (SketchBench bench = SketchBench.wired(folder, withAContactToGround());
                Play play = new Play(bench.source())) {
            play.first(ProbeEvent.WholeState.class);
            int moves = flood(bench, play, TO_GROUND);
            goesOn(bench, play);
            figure(
                    "net chatters against ground every " + SWEEP_MICROS + " µs for " + FLOOD_MILLIS + " ms",
                    moves,
                    bench,
                    play);
            assertEquals(bench.stats().count("noticed"), play.told() + play.lost());
            assertNoKeyIsBlamed(play.session());
            Diagnosis diagnosis =
                    new Engine(TestBoard.plan()).weigh(play.session().evidence());
            assertEquals(List.of(), diagnosis.findings());
            assertEquals(1, diagnosis.troubles().size(), diagnosis.troubles()::toString);
            assertTrue(
                    diagnosis.troubles().get(0).startsWith("R1 read low for a moment"), diagnosis.troubles()::toString);
        }
    }

    @Test
    void a_net_that_stands_on_ground_is_found_as_what_it_is_and_presses_go_on() throws Exception {
        for (int net : List.of(0, TestBoard.ROWS)) {
            try (SketchBench bench = SketchBench.in(folder, new PinLow(net));
                    Play play = new Play(bench.source())) {
                Pairs standing = play.first(ProbeEvent.WholeState.class).pairs();
                List<Key> pressed = List.of(keys.get(0), keys.get(5), keys.get(10));
                for (Key key : pressed) {
                    bench.tap(key, 40);
                    play.untilNow(standing);
                }
                play.pass(600);
                Session session = play.session();
                Diagnosis diagnosis = new Engine(TestBoard.plan()).weigh(session.evidence());
                String name = TestBoard.plan().nets().get(net).name();
                Fault found = diagnosis.findings().get(0).first().fault();
                System.out.println("figure: sketch, " + name + " stands on ground | " + pressed.size()
                        + " presses; " + play.told() + " changes told, " + play.lost() + " counted as lost; found: "
                        + found.says(TestBoard.plan()) + "; bench: " + bench.stats()
                        + " | told = noticed; found as what it is, no key called held");
                assertEquals(new PinLow(net), found);
                assertEquals(bench.stats().count("noticed"), play.told() + play.lost());
                assertEquals(0, session.count(KeyState.HELD), session.states()::toString);
            }
        }
    }

    @Test
    void a_reader_that_stops_loses_nothing_in_silence() throws Exception {
        try (SketchBench bench = SketchBench.in(folder);
                Play play = new Play(bench.source())) {
            play.first(ProbeEvent.WholeState.class);
            play.untilNow(Pairs.NONE);
            int moves = 0;
            long until = System.nanoTime() + STOPPED_MILLIS * 1_000_000L;
            while (System.nanoTime() < until) {
                Key key = keys.get(random.nextInt(keys.size()));
                bench.tap(key, 20);
                bench.bounce(key, 20, 500);
                bench.pass(40);
                moves += 2 + 40;
            }
            play.pass(2_000);
            goesOn(bench, play);
            figure("reader stopped for " + STOPPED_MILLIS / 1000 + " s", moves, bench, play);
            assertTrue(bench.stats().count("noticed") <= play.told() + play.lost());
            assertNoKeyIsBlamed(play.session());
        }
    }

    @Test
    void a_wire_that_spoils_one_byte_in_a_thousand_loses_nothing_in_silence() throws Exception {
        try (SketchBench bench = SketchBench.in(folder)) {
            NoisyWire wire = new NoisyWire(bench.source(), random);
            try (Play play = new Play(wire)) {
                play.first(ProbeEvent.WholeState.class);
                int moves = 0;
                for (int tap = 0; tap < NOISY_TAPS; tap++) {
                    bench.bounceMeanwhile(keys.get(random.nextInt(keys.size())), 20, 500);
                    meanwhile(bench, play);
                    moves += 40;
                }
                wire.hush();
                play.pass(2_000);
                goesOn(bench, play);
                figure("one byte in 1,000 spoiled on its pty, " + wire.damaged() + " in all", moves, bench, play);
                assertTrue(wire.damaged() > NOISY_TAPS / 3, wire.damaged() + " damaged");
                assertTrue(bench.stats().count("noticed") <= play.told() + play.lost());
                assertNoKeyIsBlamed(play.session());
            }
        }
    }

    /** Lets a contact move once in each sweep, while the host listens; how often it moved. */
    private static int flood(SketchBench bench, Play play, Key contact) throws Exception {
        int times = FLOOD_MILLIS * 1000 / (2 * SWEEP_MICROS);
        bench.bounceMeanwhile(contact, times, SWEEP_MICROS);
        meanwhile(bench, play);
        play.untilNow(Pairs.NONE);
        return 2 * times;
    }

    private static void meanwhile(SketchBench bench, Play play) throws Exception {
        do {
            play.pass(20);
        } while (!bench.isOver());
    }

    private static void goesOn(SketchBench bench, Play play) throws Exception {
        Key key = TestBoard.key("K3");
        bench.press(key);
        play.untilNow(Pairs.of(new Pair(key.row(), key.column())));
        bench.release(key);
        play.untilNow(Pairs.NONE);
        play.pass(600);
    }

    private void assertNoKeyIsBlamed(Session session) {
        assertEquals(
                keys.size(),
                session.count(KeyState.GOOD) + session.count(KeyState.UNTESTED),
                "seed " + SEED + ": " + session.states());
    }

    private static void figure(String what, int moves, SketchBench bench, Play play) throws IOException {
        System.out.println("figure: sketch, " + what + " | " + moves + " moves, then a press and its release; "
                + play.told() + " changes told, " + play.lost() + " counted as lost, "
                + play.session().garbledLines() + " lines garbled; bench: " + bench.stats()
                + " | told + lost = noticed, or more where bytes are lost; end state true, no key blamed");
    }

    /** The first row has a contact to ground. */
    private static String withAContactToGround() {
        String wiring = Netlist.text(TestBoard.plan(), List.of());
        return wiring + "switch " + TO_GROUND.name() + " " + node(wiring, "pin F0 (\\w+)") + " "
                + node(wiring, "ground (\\w+)") + "\n";
    }

    private static String node(String wiring, String line) {
        Matcher found = Pattern.compile("(?m)^" + line + "$").matcher(wiring);
        assertTrue(found.find(), wiring);
        return found.group(1);
    }
}
