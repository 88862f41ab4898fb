package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class AlphabeticTreeTest {
    record Published(String from, double optimum, List<Double> listed) {
        Published(String from, double optimum, double... weights) {
            this(from, optimum, Arrays.stream(weights).boxed().toList());
        }

        double[] weights() {
            return listed.stream().mapToDouble(Double::doubleValue).toArray();
        }

        @Override
        public String toString() {
            return from;
        }
    }

    /** Costs were recomputed by brute force; the sources are those of the weights. */
    static Stream<Published> published() {
        return Stream.of(
                new Published("Filliâtre, ML Workshop 2008 (found)", 33, 3, 2, 1, 4, 5),
                new Published("a published contest sample (found); Huffman would be 51", 53, 1, 2, 3, 4, 9, 3),
                new Published("computed; a page that says 54 is wrong", 51, 1, 2, 3, 4, 5, 6),
                new Published("computed: a heavy middle", 199, 1, 98, 1),
                new Published("computed; a greedy equal split costs 20", 18, 4, 1, 1, 4),
                new Published("computed; halving by count costs 51", 37, 10, 1, 1, 1, 1, 1, 1, 1),
                new Published("computed: 5 equal ones", 12, equal(5)),
                new Published("computed: 6 equal ones", 16, equal(6)),
                new Published("computed: 8 equal ones", 24, equal(8)),
                new Published("computed: 12 equal ones", 44, equal(12)));
    }

    private static double[] equal(int count) {
        double[] weights = new double[count];
        Arrays.fill(weights, 1);
        return weights;
    }

    @ParameterizedTest
    @MethodSource("published")
    void costs_what_was_published(Published published) {
        assertEquals(published.optimum(), AlphabeticTree.cost(published.weights()));
        assertEquals(published.optimum(), AlphabeticTable.cost(published.weights()), 1e-9);
    }

    /** Filliâtre, Functional Pearl: A Functional Implementation of the Garsia–Wachs Algorithm, 2008 (found). */
    @Test
    void has_the_published_depths() {
        assertArrayEquals(new int[] {2, 3, 3, 2, 2}, AlphabeticTree.depths(new double[] {3, 2, 1, 4, 5}));
    }

    /** Weights of space and A to Z: Gilbert and Moore, Variable-length binary encodings, 1959 (memory). */
    @Test
    void costs_what_was_published_for_english_letters() {
        double[] weights = {
            1859, 642, 127, 218, 317, 1031, 208, 152, 467, 575, 8, 49, 321, 198, 574, 632, 152, 8, 484, 514, 796, 228,
            83, 175, 13, 164, 5
        };
        double sum = Arrays.stream(weights).sum();
        assertEquals(10_000, sum);
        assertEquals(4.1978, AlphabeticTree.cost(weights) / sum, 1e-9);
        assertEquals(4.07991, AlphabeticTable.entropy(weights), 5e-6);
    }

    /** Published programs have had bugs on ties and on long runs, so both are tried. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void costs_as_little_as_the_table_of_all_trees(long seed) {
        Random random = new Random(seed);
        for (int piece = 0; piece < 3000; piece++) {
            int most = 1 + random.nextInt(random.nextBoolean() ? 4 : 1000);
            boolean whole = random.nextInt(4) > 0;
            double[] weights = random.doubles(1 + random.nextInt(40))
                    .map(each -> whole ? Math.floor(each * most) : Math.pow(each, 4))
                    .toArray();
            double optimum = AlphabeticTable.cost(weights);
            double cost = AlphabeticTree.cost(weights);
            assertEquals(optimum, cost, 1e-9 * (1 + optimum), () -> "seed " + seed + ": " + Arrays.toString(weights));
        }
    }

    /** H ≤ cost / Σw < H + 2 (Gilbert and Moore 1959, memory). */
    @Test
    void keeps_between_the_entropy_and_two_above_it() {
        Random random = new Random(7);
        for (int piece = 0; piece < 1000; piece++) {
            double[] weights = random.doubles(2 + random.nextInt(60), 0.01, 1)
                    .map(each -> each * each)
                    .toArray();
            double entropy = AlphabeticTable.entropy(weights);
            double mean = AlphabeticTree.cost(weights) / Arrays.stream(weights).sum();
            assertTrue(entropy <= mean + 1e-9 && mean < entropy + 2, () -> Arrays.toString(weights));
        }
    }
}
