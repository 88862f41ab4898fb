package buzzout.diagnosis;

import buzzout.circuit.Circuit;
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
import java.util.Map;
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
    private static final double LIKELIEST_LOG_ODDS = Math.log(0.006);

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
    private final double logThreshold;
    private final Set<Atom> tolerated;
    private final List<Hypothesis> weighed = new ArrayList<>();
    private final Set<BitSet> seen = new HashSet<>();
    private final PriorityQueue<Branch> open =
            new PriorityQueue<>(Comparator.comparingDouble(Branch::bound).reversed());
    private double best = Double.NEGATIVE_INFINITY;

    private Search(Weighing weighing, Hypothesis base, Set<Atom> focus, double logThreshold) {
        this.logThreshold = logThreshold;
        this.weighing = weighing;
        this.base = base;
        this.focus = focus;
        tolerated = new HashSet<>(base.account().unexplained().keySet());
        tolerated.removeAll(focus);
    }

    /** What to prefer among explanations of one atom. */
    enum Taste {
        /** The one that accounts best for everything. */
        WHOLE,
        /** One with fewest faults. */
        FEWEST
    }

    /** The best explanation of one atom. */
    static Hypothesis best(Weighing weighing, Hypothesis base, Atom focus, Taste taste) {
        Result result = search(weighing, base, Set.of(focus), 0);
        if (taste == Taste.WHOLE) {
            return result.best();
        }
        Set<Atom> known = base.account().unexplained().keySet();
        return result.weighed().stream()
                .filter(found -> !found.account().unexplained().containsKey(focus)
                        && known.containsAll(found.account().unexplained().keySet()))
                .min(Comparator.<Hypothesis>comparingInt(
                                found -> found.charged().cardinality())
                        .thenComparing(
                                Comparator.comparingDouble(Hypothesis::score).reversed()))
                .orElse(base);
    }

    /** Every explanation of the focus that is not far less probable than the best. */
    static Result all(Weighing weighing, Hypothesis base, Set<Atom> focus) {
        return search(weighing, base, focus, LOG_THRESHOLD);
    }

    private static Result search(Weighing weighing, Hypothesis base, Set<Atom> focus, double logThreshold) {
        Search search = new Search(weighing, base, focus, logThreshold);
        search.add(base);
        search.run();
        return search.result();
    }

    private void run() {
        for (int expanded = 0; expanded < MOST_EXPANSIONS; expanded++) {
            Branch next = open.peek();
            if (next == null || next.bound() < best + logThreshold) {
                return;
            }
            open.remove();
            expand(next);
        }
    }

    private Result result() {
        List<Hypothesis> kept = weighed.stream()
                .filter(hypothesis -> logThreshold == 0 || hypothesis.score() >= best + logThreshold)
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
        if (bound >= best + logThreshold
                && hypothesis.charged().cardinality() < base.charged().cardinality() + MOST_ADDED) {
            open.add(new Branch(hypothesis, bound));
        }
    }

    /** What this hypothesis would weigh if one more fault explained all that is still owed. */
    private double bound(Hypothesis hypothesis) {
        double owed = 0;
        boolean owes = false;
        for (Map.Entry<Atom, Double> entry : hypothesis.account().unexplained().entrySet()) {
            if (!tolerated.contains(entry.getKey())) {
                owed += entry.getValue();
                owes = true;
            }
        }
        return owes ? hypothesis.score() - owed + LIKELIEST_LOG_ODDS : Double.NEGATIVE_INFINITY;
    }

    private void expand(Branch branch) {
        Hypothesis hypothesis = branch.hypothesis();
        List<Atom> owed = owed(hypothesis);
        BitSet candidates = candidates(hypothesis, owed.get(0));
        double forgiven = -hypothesis.account().unexplained().entrySet().stream()
                .filter(entry -> tolerated.contains(entry.getKey()))
                .mapToDouble(Map.Entry::getValue)
                .sum();
        for (int fault = candidates.nextSetBit(0); fault >= 0; fault = candidates.nextSetBit(fault + 1)) {
            double paid =
                    branch.bound() - LIKELIEST_LOG_ODDS + weighing.charges().logOdds(fault);
            double left = paid - best - logThreshold;
            boolean affordable = left >= 0 || left + forgiven >= 0;
            if (affordable && weighing.charges().canJoin(hypothesis.charged(), fault)) {
                tryFault(hypothesis, owed, fault, left < -LIKELIEST_LOG_ODDS);
            }
        }
    }

    /** Weighs one more fault, unless a look at the owed atoms already shows that it is in vain. */
    private void tryFault(Hypothesis hypothesis, List<Atom> owed, int fault, boolean lastOne) {
        BitSet charged = (BitSet) hypothesis.charged().clone();
        charged.set(fault);
        if (seen.contains(charged)) {
            return;
        }
        Circuit circuit = weighing.circuit(charged);
        int mustHelp = lastOne ? owed.size() : 1;
        for (Atom atom : owed.subList(0, mustHelp)) {
            if (!helps(hypothesis, fault, circuit, atom, lastOne)) {
                return;
            }
        }
        add(weighing.weigh(hypothesis, fault, charged, circuit));
    }

    private boolean helps(Hypothesis hypothesis, int fault, Circuit circuit, Atom atom, boolean wholly) {
        if (atom instanceof Atom.Quiet) {
            Reading quiet = circuit.quiet();
            return wholly
                    ? Account.agrees(weighing.tally(), quiet)
                    : weighing.readings().number(quiet) != hypothesis.forecast().quiet();
        } else if (atom instanceof Atom.Meant meant) {
            int answer = weighing.answer(circuit, meant.key());
            return wholly
                    ? weighing.readings().chance(answer, meant.answer()) > 0
                    : answer != hypothesis.forecast().answer(meant.key());
        } else if (atom instanceof Atom.Covered covered) {
            return weighing.answer(circuit, covered.key())
                    != hypothesis.forecast().answer(covered.key());
        } else if (atom instanceof Atom.Free free) {
            return weighing.charges().affected(hypothesis.charged(), fault).stream()
                    .anyMatch(key -> comesNearer(hypothesis, circuit, key, free.answer(), wholly));
        }
        throw new AssertionError(atom);
    }

    /** Whether a key now gives an answer, or at least changed its own for one that shares a pair with it. */
    private boolean comesNearer(Hypothesis hypothesis, Circuit circuit, int key, int wanted, boolean wholly) {
        int answer = weighing.answer(circuit, key);
        if (weighing.readings().chance(answer, wanted) > 0) {
            return true;
        }
        return !wholly
                && answer != hypothesis.forecast().answer(key)
                && !weighing.readings().common(answer, wanted).isEmpty();
    }

    /** What is to be explained, the focus first and the heaviest first. */
    private List<Atom> owed(Hypothesis hypothesis) {
        return hypothesis.account().unexplained().entrySet().stream()
                .filter(entry -> !tolerated.contains(entry.getKey()))
                .sorted(Comparator.<Map.Entry<Atom, Double>>comparingInt(
                                entry -> focus.contains(entry.getKey()) ? 0 : 1)
                        .thenComparing(Map.Entry.comparingByValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    private BitSet candidates(Hypothesis hypothesis, Atom atom) {
        Plan plan = weighing.charges().plan();
        Set<Integer> nets = new HashSet<>();
        Set<Integer> keys = new HashSet<>();
        if (atom instanceof Atom.Quiet) {
            Pairs seen = weighing.tally().quiet().orElse(Pairs.NONE);
            Reading quiet = weighing.readings().reading(hypothesis.forecast().quiet());
            addNets(plan, nets, seen.minus(quiet.low()).plus(quiet.low().minus(seen)));
            plan.keys().stream()
                    .filter(key -> nets.contains(key.row()) && nets.contains(key.column()))
                    .forEach(key -> keys.add(key.index()));
        } else if (atom instanceof Atom.Meant meant) {
            addKey(plan, hypothesis, nets, keys, meant.key());
            addNets(plan, nets, weighing.readings().reading(meant.answer()).low());
        } else if (atom instanceof Atom.Covered covered) {
            addKey(plan, hypothesis, nets, keys, covered.key());
        } else if (atom instanceof Atom.Free free) {
            addNets(plan, nets, weighing.readings().reading(free.answer()).low());
            plan.keys().stream()
                    .filter(key -> nets.contains(key.row()) || nets.contains(key.column()))
                    .forEach(key -> keys.add(key.index()));
        }
        return weighing.charges().touching(keys, nets, hypothesis.charged());
    }

    private void addKey(Plan plan, Hypothesis hypothesis, Set<Integer> nets, Set<Integer> keys, int index) {
        Key key = plan.keys().get(index);
        keys.add(index);
        nets.add(key.row());
        nets.add(key.column());
        addNets(
                plan,
                nets,
                weighing.readings().reading(hypothesis.forecast().answer(index)).low());
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
