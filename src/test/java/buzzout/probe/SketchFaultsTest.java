package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.e2e.Needs;
import buzzout.plan.Key;
import buzzout.session.KeyState;
import buzzout.session.Session;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The executed sketch behind a serial device that is treated roughly; {@code -Dbuzzout.campaign=full} does more. */
@Timeout(900) // against hanging only
class SketchFaultsTest {
    private static final boolean ALL = "full".equals(System.getProperty("buzzout.campaign"));
    private static final int UNPLUGS = ALL ? 100 : 2;
    private static final int FLOOD_MILLIS = ALL ? 60_000 : 400;
    private static final int STOPPED_MILLIS = ALL ? 10_000 : 2_000;
    private static final int FLOOD_MICROS = 400;
    private static final long SEED = 12;

    @TempDir
    Path folder;

    private final Random random = new Random(SEED);

    @BeforeAll
    static void needs_the_bench() throws IOException, InterruptedException {
        Needs.theSketchBench();
    }

    @Test
    void unplugged_or_reset_in_a_press_it_goes_on_and_no_key_is_blamed() throws Exception {
        List<Key> keys = TestBoard.plan().keys();
        try (SketchBench bench = SketchBench.in(folder);
                Play play = new Play(bench.source())) {
            play.first(ProbeEvent.WholeState.class);
            for (int round = 0; round < UNPLUGS; round++) {
                Key key = keys.get(random.nextInt(keys.size()));
                bench.press(key);
                play.pass(random.nextInt(1, 40));
                int before = play.events().size();
                boolean unplugs = round % 2 == 0;
                if (unplugs) {
                    bench.unplug();
                    play.first(ProbeEvent.LinkLost.class, before);
                } else {
                    bench.reset();
                }
                boolean heldOn = random.nextBoolean();
                if (!heldOn) {
                    bench.release(key);
                }
                if (unplugs) {
                    bench.replug();
                }
                play.first(ProbeEvent.Found.class, before);
                play.first(ProbeEvent.WholeState.class, before);
                play.untilNow(heldOn ? Pairs.of(new Pair(key.row(), key.column())) : Pairs.NONE);
                bench.release(key);
                play.untilNow(Pairs.NONE);
            }
            Session session = play.session();
            assertEquals(
                    keys.size(),
                    session.count(KeyState.GOOD) + session.count(KeyState.UNTESTED),
                    "seed " + SEED + ": " + session.states());
            figure(
                    "sketch unplugged or reset in a press, " + UNPLUGS + " times",
                    told(play) + " changes told, " + lost(play) + " counted as lost, found " + found(play)
                            + " times, no key blamed; bench: " + bench.stats(),
                    "found " + (UNPLUGS + 1) + " times, no key blamed");
            assertEquals(UNPLUGS + 1, found(play));
        }
    }

    @Test
    void a_contact_that_chatters_at_the_sweeps_own_pace_is_told_or_counted_and_its_end_is_true() throws Exception {
        try (SketchBench bench = SketchBench.in(folder);
                Play play = new Play(bench.source())) {
            play.first(ProbeEvent.WholeState.class);
            int moves = 0;
            for (int millis = 0; millis < FLOOD_MILLIS; millis += 200) {
                int times = 200_000 / (2 * FLOOD_MICROS);
                bench.bounce(TestBoard.key("K6"), times, FLOOD_MICROS);
                moves += 2 * times;
                play.pass(1);
            }
            play.untilNow(Pairs.NONE);
            bench.press(TestBoard.key("K3"));
            play.untilNow(Pairs.of(
                    new Pair(TestBoard.key("K3").row(), TestBoard.key("K3").column())));
            Session session = play.session();
            assertEquals(
                    12, session.count(KeyState.GOOD) + session.count(KeyState.UNTESTED), session.states()::toString);
            assertTrue(told(play) + lost(play) > 0);
            figure(
                    "sketch, contact chatters every " + FLOOD_MICROS + " µs for " + FLOOD_MILLIS + " ms",
                    moves + " moves, " + told(play) + " changes told, " + lost(play) + " counted as lost, then a press"
                            + " heard; bench: " + bench.stats(),
                    "end state true, no key blamed; a sweep sees at most one change in its time");
        }
    }

    @Test
    void a_reader_that_stops_loses_nothing_in_silence() throws Exception {
        List<Key> keys = TestBoard.plan().keys();
        try (SketchBench bench = SketchBench.in(folder);
                Play play = new Play(bench.source())) {
            play.first(ProbeEvent.WholeState.class);
            play.untilNow(Pairs.NONE);
            int taps = 0;
            long until = System.nanoTime() + STOPPED_MILLIS * 1_000_000L;
            while (System.nanoTime() < until) {
                bench.tap(keys.get(random.nextInt(keys.size())), 20);
                taps++;
            }
            play.pass(2_000);
            play.untilNow(Pairs.NONE);
            bench.press(keys.get(0));
            play.untilNow(Pairs.of(new Pair(keys.get(0).row(), keys.get(0).column())));
            figure(
                    "sketch, reader stopped for " + STOPPED_MILLIS / 1000 + " s",
                    2 * taps + " changes meanwhile, " + (told(play) - 1) + " told, " + lost(play)
                            + " counted as lost; bench: " + bench.stats(),
                    "told and counted are at least what changed");
            assertTrue(told(play) - 1 + lost(play) >= 2L * taps, taps + " taps: " + play.events());
            Session session = play.session();
            assertEquals(
                    keys.size(),
                    session.count(KeyState.GOOD) + session.count(KeyState.UNTESTED),
                    session.states()::toString);
        }
    }

    private static void figure(String what, String value, String expected) {
        System.out.println("figure: " + what + " | " + value + " | " + expected);
    }

    private static long told(Play play) {
        return play.events().stream()
                .filter(event -> event instanceof ProbeEvent.Closed || event instanceof ProbeEvent.Opened)
                .count();
    }

    private static long found(Play play) {
        return play.events().stream().filter(ProbeEvent.Found.class::isInstance).count();
    }

    private static long lost(Play play) {
        return play.events().stream()
                .mapToLong(event -> event instanceof ProbeEvent.Lost lost ? lost.changes() : 0)
                .sum();
    }
}
