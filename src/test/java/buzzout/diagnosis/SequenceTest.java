package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SequenceTest {
    private static final double UNTOLD = 30;

    /** States and tests from Pattipati and Alexandridis 1990 (memory); the cost was computed by brute force. */
    @Test
    void finds_the_optimal_sequence_of_pattipati_and_alexandridis() {
        String[] rows = {"00000", "01001", "00110", "10011", "11000", "11110"};
        List<Sequence.Test> tests = IntStream.range(0, 5)
                .mapToObj(test -> new Sequence.Test(
                        1,
                        Arrays.stream(rows).map(row -> (int) row.charAt(test)).toList()))
                .toList();
        Sequence sequence = new Sequence(new double[] {.70, .01, .02, .10, .05, .12}, tests, UNTOLD);
        assertEquals(2.18, sequence.effort(), 1e-9);
    }

    /**
     * The rule of Mitten 1960 (memory; costs computed): one of three is at fault, and must be found so. A fourth state
     * without weight, in which none is, keeps the last test from being saved.
     */
    @Test
    void tests_in_the_order_of_probability_over_cost() {
        List<Sequence.Test> tests = List.of(
                new Sequence.Test(5, List.of(1, 0, 0, 0)),
                new Sequence.Test(1, List.of(0, 1, 0, 0)),
                new Sequence.Test(1, List.of(0, 0, 1, 0)));
        Sequence sequence = new Sequence(new double[] {.5, .3, .2, 0}, tests, UNTOLD);
        assertEquals(4.2, sequence.effort(), 1e-9);
        assertEquals(4.2, sequence.effortWithFirst(tests.get(1)), 1e-9);
        assertEquals(5.7, sequence.effortWithFirst(tests.get(0)), 1e-9, "the most probable first");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void costs_as_little_as_the_best_of_all_decision_trees(long seed) {
        Random random = new Random(seed);
        for (int piece = 0; piece < 300; piece++) {
            int states = 1 + random.nextInt(6);
            double[] weights = random.doubles(states, 0.01, 1).toArray();
            List<Sequence.Test> tests = new ArrayList<>();
            for (int test = random.nextInt(6); test >= 0; test--) {
                tests.add(new Sequence.Test(
                        1 + random.nextInt(9),
                        random.ints(states, 0, 2 + random.nextInt(2)).boxed().toList()));
            }
            List<Integer> all = IntStream.range(0, states).boxed().toList();
            double expected =
                    plain(weights, tests, all) / Arrays.stream(weights).sum();
            assertEquals(expected, new Sequence(weights, tests, UNTOLD).effort(), 1e-9, () -> "seed " + seed);
        }
    }

    /** Every test first, and every test after each outcome. */
    private static double plain(double[] weights, List<Sequence.Test> tests, List<Integer> left) {
        double weight = left.stream().mapToDouble(state -> weights[state]).sum();
        double best = left.size() == 1 ? 0 : UNTOLD * weight;
        boolean told = false;
        for (Sequence.Test test : tests) {
            var parts = left.stream()
                    .collect(java.util.stream.Collectors.groupingBy(
                            state -> test.outcomes().get(state)));
            if (parts.size() > 1) {
                double cost = test.effort() * weight
                        + parts.values().stream()
                                .mapToDouble(part -> plain(weights, tests, part))
                                .sum();
                best = told ? Math.min(best, cost) : cost;
                told = true;
            }
        }
        return best;
    }

    /** Short chains go by the search, long ones by the alphabetic tree. */
    @ParameterizedTest
    @ValueSource(ints = {2, 7, 12, 13, 30, 63})
    void along_a_chain_it_costs_what_the_alphabetic_optimum_costs(int links) {
        Random random = new Random(links);
        double[] weights = random.doubles(links, 0.001, 1).toArray();
        List<Integer> order = new ArrayList<>(IntStream.range(0, links).boxed().toList());
        java.util.Collections.shuffle(order, random);
        List<Sequence.Test> tests = new ArrayList<>();
        for (int cut = 1; cut < links; cut++) {
            int joint = cut;
            tests.add(new Sequence.Test(
                    Labour.TOUCH,
                    IntStream.range(0, links)
                            .mapToObj(state -> order.indexOf(state) < joint ? 5 : 9)
                            .toList()));
        }
        for (int link = 0; link < links; link++) {
            int at = link;
            tests.add(new Sequence.Test(
                    Labour.READING,
                    IntStream.range(0, links)
                            .mapToObj(state -> state == at ? 1 : 0)
                            .toList()));
        }
        java.util.Collections.shuffle(tests, random);
        double[] inOrder = order.stream().mapToDouble(state -> weights[state]).toArray();
        double optimum = Labour.TOUCH
                * AlphabeticTable.cost(inOrder)
                / Arrays.stream(weights).sum();
        Sequence sequence = new Sequence(weights, tests, UNTOLD);
        assertEquals(optimum, sequence.effort(), 1e-9);
        double best =
                tests.stream().mapToDouble(sequence::effortWithFirst).min().orElseThrow();
        assertEquals(optimum, best, 1e-9);
    }

    @Test
    void many_states_without_order_still_end_in_certainty() {
        Random random = new Random(5);
        double[] weights = random.doubles(40, 0.01, 1).toArray();
        List<Sequence.Test> tests = new ArrayList<>();
        for (int test = 0; test < 60; test++) {
            tests.add(new Sequence.Test(
                    1 + random.nextInt(4), random.ints(40, 0, 2).boxed().toList()));
        }
        double effort = new Sequence(weights, tests, UNTOLD).effort();
        double entropy = AlphabeticTable.entropy(weights);
        assertTrue(effort >= entropy && effort < 2 * entropy, () -> effort + " against " + entropy + " bits");
    }
}
