package buzzout.diagnosis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which test to make first, so that the expected effort until only one state is left is least.
 *
 * <p>Exact for up to {@value #MOST_STATES} states, by search of the AND/OR graph over the sets of states that may be left
 * (test sequencing: Pattipati and Alexandridis 1990), and for any number of them along a chain, by alphabetic trees.
 * Elsewhere each first test is followed by that which gives most information for its effort.
 */
final class Sequence {
    static final int MOST_STATES = 12;

    /**
     * @param outcomes what the test shows in each state, as numbers
     */
    record Test(double effort, List<Integer> outcomes) {}

    private final double[] weights;
    private final List<Test> tests;
    private final double untold;
    private final Map<Long, Double> known = new HashMap<>();

    /**
     * @param weights of the states; at most 64 of them
     * @param untold the effort where several states are left that no test tells apart
     */
    Sequence(double[] weights, List<Test> tests, double untold) {
        this.weights = weights;
        this.tests = withoutDearer(tests);
        this.untold = untold;
    }

    /** Of tests that tell the same apart, the one of least effort. */
    private static List<Test> withoutDearer(List<Test> tests) {
        Map<List<Integer>, Test> cheapest = new LinkedHashMap<>();
        for (Test test : tests) {
            cheapest.merge(partition(test), test, (one, other) -> one.effort() <= other.effort() ? one : other);
        }
        return List.copyOf(cheapest.values());
    }

    /** For each state, the first that shows the same. */
    private static List<Integer> partition(Test test) {
        return test.outcomes().stream().map(test.outcomes()::indexOf).toList();
    }

    /** The expected effort from here on, with the best test first. */
    double effort() {
        return effort(all()) / total(all());
    }

    /** The expected effort from here on with this test first; infinite if it tells nothing. */
    double effortWithFirst(Test test) {
        return withFirst(test, all()) / total(all());
    }

    private long all() {
        return -1L >>> (Long.SIZE - weights.length);
    }

    private double withFirst(Test test, long left) {
        List<Long> parts = parts(test, left);
        return parts.size() < 2
                ? Double.POSITIVE_INFINITY
                : test.effort() * total(left)
                        + parts.stream().mapToDouble(this::effort).sum();
    }

    /** Weighted by the states that are left, so that parts add up. */
    private double effort(long left) {
        if (Long.bitCount(left) == 1) {
            return 0;
        }
        Double before = known.get(left);
        if (before == null) {
            before = worked(left);
            known.put(left, before);
        }
        return before;
    }

    private double worked(long left) {
        List<Test> telling =
                tests.stream().filter(test -> parts(test, left).size() > 1).toList();
        if (telling.isEmpty()) {
            return untold * total(left);
        } else if (Long.bitCount(left) <= MOST_STATES) {
            return telling.stream()
                    .mapToDouble(test -> withFirst(test, left))
                    .min()
                    .orElseThrow();
        }
        return Chain.of(telling, left)
                .map(chain -> chain.effort(weights, untold))
                .orElseGet(() -> withFirst(mostTelling(telling, left), left));
    }

    private Test mostTelling(List<Test> telling, long left) {
        Test best = telling.get(0);
        double most = 0;
        for (Test test : telling) {
            double gain = gain(test, left) / test.effort();
            if (gain > most) {
                most = gain;
                best = test;
            }
        }
        return best;
    }

    /** The entropy that a test takes away, in nats. */
    private double gain(Test test, long left) {
        double total = total(left);
        double gain = 0;
        for (long part : parts(test, left)) {
            double chance = total(part) / total;
            gain -= chance > 0 ? chance * Math.log(chance) : 0;
        }
        return gain;
    }

    /** The states that are left, by what the test shows in them. */
    private static List<Long> parts(Test test, long left) {
        Map<Integer, Long> parts = new LinkedHashMap<>();
        for (long states = left; states != 0; states &= states - 1) {
            int state = Long.numberOfTrailingZeros(states);
            parts.merge(test.outcomes().get(state), 1L << state, (one, other) -> one | other);
        }
        return new ArrayList<>(parts.values());
    }

    private double total(long states) {
        double total = 0;
        for (long left = states; left != 0; left &= left - 1) {
            total += weights[Long.numberOfTrailingZeros(left)];
        }
        return total;
    }
}
