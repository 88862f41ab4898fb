package buzzout.diagnosis;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
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

    private static final Comparator<Cut> CHEAPEST_FIRST =
            (one, other) -> Double.compare(one.test.effort(), other.test.effort());

    /** A test's states by what it shows in them. */
    private static final class Cut {
        private final Test test;
        private final long[] parts;

        Cut(Test test) {
            this.test = test;
            Map<Integer, Long> shown = new LinkedHashMap<>();
            for (int state = 0; state < test.outcomes().size(); state++) {
                shown.merge(test.outcomes().get(state), 1L << state, (one, other) -> one | other);
            }
            parts = new long[shown.size()];
            int at = 0;
            for (long states : shown.values()) {
                parts[at++] = states;
            }
        }

        /** Whether it shows different things in these states. */
        boolean tells(long left) {
            for (long part : parts) {
                if ((part & left) != 0) {
                    return (part & left) != left;
                }
            }
            return false;
        }
    }

    private final double[] weights;
    /** Those of least effort first. */
    private final List<Cut> cuts;

    private final double untold;
    private final Map<Long, Double> known = new HashMap<>();

    /**
     * @param weights of the states; at most 64 of them
     * @param untold the effort where several states are left that no test tells apart
     */
    Sequence(double[] weights, List<Test> tests, double untold) {
        this.weights = weights;
        this.cuts = new ArrayList<>();
        for (Test test : withoutDearer(tests)) {
            cuts.add(new Cut(test));
        }
        cuts.sort(CHEAPEST_FIRST);
        this.untold = untold;
    }

    /** Of tests that tell the same apart, the one of least effort. */
    private static Collection<Test> withoutDearer(List<Test> tests) {
        Map<List<Integer>, Test> cheapest = new LinkedHashMap<>();
        for (Test test : tests) {
            cheapest.merge(partition(test), test, (one, other) -> one.effort() <= other.effort() ? one : other);
        }
        return cheapest.values();
    }

    /** For each state, the first that shows the same. */
    private static List<Integer> partition(Test test) {
        List<Integer> partition = new ArrayList<>();
        for (int outcome : test.outcomes()) {
            partition.add(test.outcomes().indexOf(outcome));
        }
        return partition;
    }

    /** The expected effort from here on, with the best test first. */
    double effort() {
        return effort(all()) / total(all());
    }

    /** The expected effort from here on with this test first; infinite if it tells nothing. */
    double effortWithFirst(Test test) {
        return withFirst(new Cut(test), all(), Double.POSITIVE_INFINITY) / total(all());
    }

    private long all() {
        return -1L >>> (Long.SIZE - weights.length);
    }

    /** Infinite as soon as it is more than the least effort known. */
    private double withFirst(Cut cut, long left, double least) {
        if (!cut.tells(left)) {
            return Double.POSITIVE_INFINITY;
        }
        double effort = cut.test.effort() * total(left);
        for (long part : cut.parts) {
            if (effort > least) {
                return Double.POSITIVE_INFINITY;
            }
            effort += (part & left) == 0 ? 0 : effort(part & left);
        }
        return effort;
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
        if (Long.bitCount(left) <= MOST_STATES) {
            return exact(left);
        }
        List<Cut> telling = cuts.stream().filter(cut -> cut.tells(left)).toList();
        if (telling.isEmpty()) {
            return untold * total(left);
        }
        return Chain.of(telling.stream().map(cut -> cut.test).toList(), left)
                .map(chain -> chain.effort(weights, untold))
                .orElseGet(() -> withFirst(mostTelling(telling, left), left, Double.POSITIVE_INFINITY));
    }

    private double exact(long left) {
        double total = total(left);
        double least = Double.POSITIVE_INFINITY;
        for (Cut cut : cuts) {
            if (cut.test.effort() * total >= least) {
                break;
            }
            least = Math.min(least, withFirst(cut, left, least));
        }
        return Double.isInfinite(least) ? untold * total : least;
    }

    private Cut mostTelling(List<Cut> telling, long left) {
        Cut best = telling.get(0);
        double most = 0;
        for (Cut cut : telling) {
            double gain = gain(cut, left) / cut.test.effort();
            if (gain > most) {
                most = gain;
                best = cut;
            }
        }
        return best;
    }

    /** The entropy that a test takes away, in nats. */
    private double gain(Cut cut, long left) {
        double total = total(left);
        double gain = 0;
        for (long part : cut.parts) {
            double chance = total(part & left) / total;
            gain -= chance > 0 ? chance * Math.log(chance) : 0;
        }
        return gain;
    }

    private double total(long states) {
        double total = 0;
        for (long left = states; left != 0; left &= left - 1) {
            total += weights[Long.numberOfTrailingZeros(left)];
        }
        return total;
    }
}
