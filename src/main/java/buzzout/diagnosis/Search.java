package buzzout.diagnosis;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * Adds faults to a base until chosen atoms are explained, best first.
 *
 * <p>Conflict-directed in the manner of Reiter (1987, from memory): an unexplained atom names the faults that could
 * change it, and each of them starts a branch. A branch is left when its prior alone is below the threshold.
 */
final class Search {
    /** Explanations this much less probable than the best are left unexplored. */
    static final double LOG_THRESHOLD = Math.log(1e-3);

    private static final int MOST_EXPANSIONS = 400;
    private static final int MOST_ADDED = 4;

    /**
     * What a search found.
     *
     * @param weighed every hypothesis within the threshold of the best, best first
     * @param logUnexplored the logarithm of an estimate of the weight of what was left
     */
    record Result(List<Hypothesis> weighed, double logUnexplored) {
        Hypothesis best() {
            return weighed.get(0);
        }
    }

    private record Branch(Hypothesis hypothesis, double bound) {}

    private final Weighing weighing;
    private final Hypothesis base;
    private final Set<Atom> focus;
    private final Set<Atom> tolerated;
    private final List<Hypothesis> weighed = new ArrayList<>();
    private final Set<BitSet> seen = new HashSet<>();
    private final PriorityQueue<Branch> open =
            new PriorityQueue<>(Comparator.comparingDouble(Branch::bound).reversed());
    private double best = Double.NEGATIVE_INFINITY;

    private Search(Weighing weighing, Hypothesis base, Set<Atom> focus) {
        this.weighing = weighing;
        this.base = base;
        this.focus = focus;
        tolerated = new HashSet<>(base.account().unexplained().keySet());
        tolerated.removeAll(focus);
    }

    static Result explain(Weighing weighing, Hypothesis base, Set<Atom> focus) {
        Search search = new Search(weighing, base, focus);
        search.add(base);
        search.run();
        return search.result();
    }

    private void run() {
        for (int expanded = 0; expanded < MOST_EXPANSIONS; expanded++) {
            Branch next = open.peek();
            if (next == null || next.bound() < best + LOG_THRESHOLD) {
                return;
            }
            open.remove();
            expand(next.hypothesis());
        }
    }

    private Result result() {
        List<Hypothesis> kept = weighed.stream()
                .filter(hypothesis -> hypothesis.score() >= best + LOG_THRESHOLD)
                .sorted(Comparator.comparingDouble(Hypothesis::score).reversed())
                .toList();
        double left = open.stream()
                .mapToDouble(branch -> Math.exp(branch.bound() - best))
                .sum();
        return new Result(kept, left == 0 ? Double.NEGATIVE_INFINITY : Math.log(left) + best);
    }

    private void add(Hypothesis hypothesis) {
        if (!seen.add(hypothesis.charged())) {
            return;
        }
        weighed.add(hypothesis);
        best = Math.max(best, hypothesis.score());
        double bound = bound(hypothesis);
        if (bound >= best + LOG_THRESHOLD
                && hypothesis.charged().cardinality() < base.charged().cardinality() + MOST_ADDED) {
            open.add(new Branch(hypothesis, bound));
        }
    }

    /** What this hypothesis would weigh if one more fault explained all that is still to be explained. */
    private double bound(Hypothesis hypothesis) {
        double owed = 0;
        boolean owes = false;
        for (var entry : hypothesis.account().unexplained().entrySet()) {
            if (!tolerated.contains(entry.getKey())) {
                owed += entry.getValue();
                owes = true;
            }
        }
        return owes ? hypothesis.score() - owed + LIKELIEST_LOG_ODDS : Double.NEGATIVE_INFINITY;
    }

    private static final double LIKELIEST_LOG_ODDS = Math.log(0.006);

    private void expand(Hypothesis hypothesis) {
        Atom atom = heaviest(hypothesis);
        BitSet candidates = candidates(hypothesis, atom);
        for (int fault = candidates.nextSetBit(0); fault >= 0; fault = candidates.nextSetBit(fault + 1)) {
            if (!weighing.charges().canJoin(hypothesis.charged(), fault)) {
                continue;
            }
            Hypothesis child = weighing.with(hypothesis, fault);
            if (changes(hypothesis, child, atom)) {
                add(child);
            }
        }
    }

    private Atom heaviest(Hypothesis hypothesis) {
        return hypothesis.account().unexplained().entrySet().stream()
                .filter(entry -> !tolerated.contains(entry.getKey()))
                .min(Comparator.<java.util.Map.Entry<Atom, Double>>comparingInt(
                                entry -> focus.contains(entry.getKey()) ? 0 : 1)
                        .thenComparing(java.util.Map.Entry.comparingByValue()))
                .orElseThrow()
                .getKey();
    }

    private boolean changes(Hypothesis hypothesis, Hypothesis child, Atom atom) {
        Forecast before = hypothesis.forecast();
        Forecast after = child.forecast();
        if (atom instanceof Atom.Quiet) {
            return !before.quiet().equals(after.quiet());
        } else if (atom instanceof Atom.Meant meant) {
            return !before.answers().get(meant.key()).equals(after.answers().get(meant.key()));
        } else if (atom instanceof Atom.Covered covered) {
            return !before.answers().get(covered.key()).equals(after.answers().get(covered.key()));
        }
        return !before.answers().equals(after.answers());
    }

    private BitSet candidates(Hypothesis hypothesis, Atom atom) {
        Plan plan = weighing.charges().plan();
        Set<Integer> nets = new HashSet<>();
        Set<Integer> keys = new HashSet<>();
        if (atom instanceof Atom.Quiet) {
            Pairs seen = weighing.tally().quiet().orElse(Pairs.NONE);
            Reading quiet = hypothesis.forecast().quiet();
            addNets(plan, nets, seen.minus(quiet.low()).plus(quiet.low().minus(seen)));
            plan.keys().stream()
                    .filter(key -> nets.contains(key.row()) && nets.contains(key.column()))
                    .forEach(key -> keys.add(key.index()));
        } else if (atom instanceof Atom.Meant meant) {
            addKey(plan, hypothesis, nets, keys, meant.key());
            addNets(plan, nets, meant.answer());
        } else if (atom instanceof Atom.Covered covered) {
            addKey(plan, hypothesis, nets, keys, covered.key());
        } else if (atom instanceof Atom.Free free) {
            addNets(plan, nets, free.answer());
            plan.keys().stream()
                    .filter(key -> nets.contains(key.row()) || nets.contains(key.column()))
                    .forEach(key -> keys.add(key.index()));
        }
        return weighing.charges().touching(keys, nets, hypothesis.charged());
    }

    private static void addKey(Plan plan, Hypothesis hypothesis, Set<Integer> nets, Set<Integer> keys, int index) {
        Key key = plan.keys().get(index);
        keys.add(index);
        nets.add(key.row());
        nets.add(key.column());
        addNets(plan, nets, hypothesis.forecast().answers().get(index).low());
    }

    private static void addNets(Plan plan, Set<Integer> nets, Pairs pairs) {
        for (Pair pair : pairs.list()) {
            for (int pin : new int[] {pair.low(), pair.reads()}) {
                if (pin < plan.nets().size()) {
                    nets.add(pin);
                }
            }
        }
    }
}
