package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.LongSummaryStatistics;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One byte in a thousand is damaged, both ways, for minutes of pressing: the host still ends up with the truth. */
class ConvergenceTest {
    private static final int PRESSES = 400;
    private static final LongSummaryStatistics SPOILED = new LongSummaryStatistics();
    private static final LongSummaryStatistics LOST = new LongSummaryStatistics();

    @AfterAll
    static void tell() {
        System.out.printf(
                "figure: one byte in 1,000 spoiled, %d moves, %d seeds | %d to %d spoiled, %d to %d changes counted as"
                        + " lost, end state true | true%n",
                PRESSES, LOST.getCount(), SPOILED.getMin(), SPOILED.getMax(), LOST.getMin(), LOST.getMax());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void a_noisy_wire_delays_the_truth_but_does_not_bend_it(long seed) throws Exception {
        Random random = new Random(seed);
        SimulatedBoard board = SimulatedBoard.inSimulatedTime(TestBoard.plan(), List.of(), seed);
        NoisyWire wire = new NoisyWire(board, random);
        List<Key> keys = TestBoard.plan().keys();
        BitSet down = new BitSet();
        try (Play play = new Play(wire)) {
            for (int press = 0; press < PRESSES; press++) {
                Key key = keys.get(random.nextInt(keys.size()));
                down.flip(key.index());
                if (down.get(key.index())) {
                    board.press(key);
                } else {
                    board.release(key);
                }
                play.pass(random.nextInt(1, 60));
                // One key after another, so that what is down says what conducts.
                if (down.cardinality() > 1) {
                    down.stream().mapToObj(keys::get).forEach(board::release);
                    down.clear();
                    play.pass(20);
                }
            }
            wire.hush();
            play.pass(3_000);

            assertEquals(truth(keys, down), Play.now(play.events()), "seed " + seed);
            assertTrue(wire.damaged() > 20, "seed " + seed + " damaged " + wire.damaged() + " bytes");
            List<Long> times = Play.times(play.events());
            assertEquals(times.stream().sorted().toList(), times, "seed " + seed);
            SPOILED.accept(wire.damaged());
            LOST.accept(play.events().stream()
                    .mapToLong(event -> event instanceof ProbeEvent.Lost lost ? lost.changes() : 0)
                    .sum());
        }
    }

    private static Pairs truth(List<Key> keys, BitSet down) {
        Set<Pair> pairs = new HashSet<>();
        down.stream().mapToObj(keys::get).forEach(key -> pairs.add(new Pair(key.row(), key.column())));
        return Pairs.of(pairs);
    }
}
