package buzzout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.e2e.Needs;
import buzzout.plan.Controller;
import buzzout.plan.Controllers;
import buzzout.plan.Plan;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The circuit's readings agree with ngspice's operating points of the same netlist.
 *
 * <p>Random boards with up to three faults and nine held keys, each of the controllers in turn, the weakest and the
 * strongest pull-up, two public models of the 1N4148 (CHECKS.md section 2): what should surely read low lies below what
 * the controller surely reads as low, and what should read high above what it surely reads as high. What lies between is
 * reported as uncertain, and may lie anywhere.
 */
class CircuitAgainstSpiceTest {
    private static final long SEED = 1;
    private static final int BOARDS = 100;

    @TempDir
    Path folder;

    @BeforeAll
    static void needNgspice() throws InterruptedException {
        Needs.ngspice();
    }

    @Test
    void a_sure_low_conducts_and_a_sure_high_does_not() throws IOException, InterruptedException {
        Random random = new Random(SEED);
        Tally tally = new Tally();
        for (int board = 0; board < BOARDS; board++) {
            Controller controller = Controllers.ALL.get(board % Controllers.ALL.size());
            Plan plan = on(controller, RandomBoards.plan(random, controller.sureDiodes()));
            // What comes and goes has no operating point; CircuitAgainstGraphTest holds it at its best and at its
            // worst.
            List<Fault> faults = RandomBoards.faults(random, plan, 3).stream()
                    .filter(fault -> fault.kind() != FaultKind.COMES_AND_GOES)
                    .toList();
            BitSet held = RandomBoards.held(random, plan, 9);
            Reading reading = Circuit.of(plan, faults).read(held);
            String about = "seed " + SEED + ", board " + board + " on " + controller.name() + " with "
                    + faults.stream().map(fault -> fault.code(plan)).toList() + ", held " + held;
            double pullUp = board % 8 < 4
                    ? controller.pullUpOhms().weakest()
                    : controller.pullUpOhms().strongest();
            SpiceDeck deck = new SpiceDeck(
                    plan,
                    Netlist.text(plan, faults),
                    held,
                    pullUp,
                    SpiceDeck.MODELS.get(random.nextInt(SpiceDeck.MODELS.size())));
            tally.compare(controller, reading, deck.volts(folder), about);
        }
        System.out.println(tally);
        assertTrue(tally.lows > 400 && tally.highs > 2000 && tally.betweens > 30, tally::toString);
        assertEquals(List.of(), tally.wrong, () -> String.join("\n", tally.wrong));
    }

    private static Plan on(Controller controller, Plan plan) {
        return new Plan(
                plan.name(),
                controller,
                plan.stripe(),
                plan.diodes(),
                plan.nets(),
                plan.keys(),
                plan.sparePin(),
                plan.bounceLimitMillis());
    }

    /** Levels compared. */
    private static final class Tally {
        private final List<String> wrong = new ArrayList<>();
        private int lows;
        private int highs;
        private int betweens;
        private double highestLow;
        private double leastMargin = Double.POSITIVE_INFINITY;

        void compare(Controller controller, Reading reading, double[][] volts, String about) {
            for (int driven = 0; driven < volts.length; driven++) {
                for (int reads = 0; reads < volts.length; reads++) {
                    if (reads == driven) {
                        continue;
                    }
                    Pair pair = new Pair(driven, reads);
                    double level = volts[driven][reads];
                    if (reading.low().contains(pair)) {
                        lows++;
                        highestLow = Math.max(highestLow, level / controller.lowVolts());
                        check(level <= controller.lowVolts(), "low", pair, level, about);
                    } else if (reading.between().contains(pair)) {
                        betweens++;
                    } else {
                        highs++;
                        leastMargin = Math.min(leastMargin, level / controller.highVolts());
                        check(level >= controller.highVolts(), "high", pair, level, about);
                    }
                }
            }
        }

        private void check(boolean holds, String level, Pair pair, double volts, String about) {
            if (!holds) {
                wrong.add(String.format("%s: %s should be a sure %s, is at %.3f V", about, pair, level, volts));
            }
        }

        @Override
        public String toString() {
            return String.format(
                    "%d boards in ngspice (seed %d): %d sure lows, the highest at %.2f of VIL; %d sure highs, the lowest"
                            + " at %.2f of VIH; %d between",
                    BOARDS, SEED, lows, highestLow, highs, leastMargin, betweens);
        }
    }
}
