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
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The executed sketch, its cable pulled and its controller reset; {@code -Dbuzzout.campaign=full} does more. */
@Timeout(900) // against hanging only
class SketchFaultsTest {
    private static final int TIMES = "full".equals(System.getProperty("buzzout.campaign")) ? 100 : 2;
    private static final long SEED = 12;

    /** No line that the sketch says of its own accord is as short. */
    private static final int SHORTER_THAN_A_LINE = 9;

    @TempDir
    Path folder;

    private final Random random = new Random(SEED);

    @BeforeAll
    static void needs_the_bench() throws IOException, InterruptedException {
        Needs.theSketchBench();
    }

    /** What happens to the sketch while a key is down. */
    enum Mishap {
        /** The cable is pulled; the controller has another supply and sweeps on. */
        UNPLUGGED,
        /** The cable is pulled, and the controller starts anew when it is back. */
        WITHOUT_POWER,
        /** The controller starts anew behind a cable that stays. */
        RESET,
        /** The cable is pulled while a line is on its way, of which the host gets some bytes. */
        CUT_IN_A_LINE,
        /** As before, and once more while the two greet each other. */
        CUT_IN_THE_GREETING
    }

    @ParameterizedTest
    @EnumSource
    void it_goes_on_and_no_key_is_blamed(Mishap mishap) throws Exception {
        List<Key> keys = TestBoard.plan().keys();
        try (SketchBench bench = SketchBench.in(folder);
                Play play = new Play(bench.source())) {
            play.first(ProbeEvent.WholeState.class);
            for (int round = 0; round < TIMES; round++) {
                Key key = keys.get(random.nextInt(keys.size()));
                int before = play.events().size();
                happen(mishap, bench, play, key);
                boolean heldOn = random.nextBoolean();
                if (!heldOn) {
                    bench.release(key);
                }
                if (mishap != Mishap.RESET) {
                    bench.replug();
                }
                if (mishap == Mishap.CUT_IN_THE_GREETING) {
                    bench.unplugInALine(random.nextInt(1, SHORTER_THAN_A_LINE));
                    int first = play.events().size();
                    play.first(ProbeEvent.LinkLost.class, first);
                    bench.replug();
                }
                play.first(ProbeEvent.Found.class, before);
                play.first(ProbeEvent.WholeState.class, before);
                play.untilNow(heldOn ? Pairs.of(new Pair(key.row(), key.column())) : Pairs.NONE);
                bench.release(key);
                play.untilNow(Pairs.NONE);
            }
            Session session = play.session();
            SketchBench.Stats stats = bench.stats();
            long found = play.count(ProbeEvent.Found.class);
            System.out.println("figure: sketch " + mishap + " in a press, " + TIMES + " times | " + play.told()
                    + " changes told, " + play.lost() + " counted as lost, link lost "
                    + play.count(ProbeEvent.LinkLost.class) + " times, found " + found + ", "
                    + session.garbledLines() + " lines garbled, no key blamed; bench: " + stats
                    + " | found each time, no key blamed, none told that was not sent");
            assertEquals(
                    keys.size(),
                    session.count(KeyState.GOOD) + session.count(KeyState.UNTESTED),
                    "seed " + SEED + ": " + session.states());
            assertTrue(found > TIMES, found + " times");
            assertTrue(play.count(ProbeEvent.LinkLost.class) >= TIMES);
            assertTrue(play.told() <= stats.count("told"), "heard more than was said: " + play.told());
            assertEquals(cuts(mishap), stats.count("cut"));
        }
    }

    private static int cuts(Mishap mishap) {
        return switch (mishap) {
            case CUT_IN_A_LINE -> TIMES;
            case CUT_IN_THE_GREETING -> 2 * TIMES;
            default -> 0;
        };
    }

    /** Presses the key, and has it happen while the key is down. */
    private void happen(Mishap mishap, SketchBench bench, Play play, Key key) throws Exception {
        int before = play.events().size();
        switch (mishap) {
            case UNPLUGGED, WITHOUT_POWER, RESET -> {
                bench.press(key);
                play.pass(random.nextInt(1, 40));
                before = play.events().size();
                if (mishap != Mishap.UNPLUGGED) {
                    bench.reset();
                }
                if (mishap != Mishap.RESET) {
                    bench.unplug();
                }
            }
            case CUT_IN_A_LINE, CUT_IN_THE_GREETING -> {
                bench.unplugInALine(random.nextInt(1, SHORTER_THAN_A_LINE));
                bench.press(key);
            }
        }
        play.first(ProbeEvent.LinkLost.class, before);
    }
}
