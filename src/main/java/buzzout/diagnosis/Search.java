package buzzout.diagnosis;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Adds faults to a base until the terms in focus are explained, best first.
 *
 * <p>Conflict-directed in the manner of Reiter (1987, from memory): a term that is owed an explanation names the faults
 * that could change it, and each of them starts a branch. A branch's bound is what it would weigh if one more fault, of
 * the likeliest kind, paid all that it owes; it is left when that is below the threshold.
 */
final class Search {
    /** Explanations this much less probable than the best are left unexplored. */
    static final double LOG_THRESHOLD = Math.log(1e-3);

    private static final double NOTHING_OWED = 1e-9;
    /** How much of what a branch owes is hoped for; less than all, for one more fault seldom mends much damage. */
    private static final double RECOVERED = 0.9;

    private static final int MOST_ADDED = 3;
    private static final BitSet NONE = new BitSet();

    /**
     * What a search found.
     *
     * @param weighed every hypothesis within the threshold of the best, best first
     * @param unexplored at most how much weight was left, as a part of the best hypothesis's weight
     */
    record Result(List<Hypothesis> weighed, double unexplored) {
        Hypothesis best() {
            return weighed.get(0);
        }
    }

    /** What to prefer among explanations of one term. */
    enum Taste {
        /** The one that accounts best for everything. */
        WHOLE,
        /** One with fewest faults. */
        FEWEST,
        /** One of faults that last: a joint that comes and goes explains too much, and hides what they explain better. */
        LASTING
    }

    private record Branch(Hypothesis hypothesis, double owed, double bound) {}

    private static final int USUALLY_SEEN = 500;

    private final Case board;
    private final Hypothesis base;
    private final Set<Term> focus;
    private final double logThreshold;
    private final BitSet barred;
    private final Tolerance tolerance;
    private final double likeliest;
    private final List<Branch> weighed = new ArrayList<>();
    private final Set<SetOfFaults> seen = new HashSet<>(USUALLY_SEEN);
    private final PriorityQueue<Branch> open =
            new PriorityQueue<>((one, other) -> Double.compare(other.bound(), one.bound()));
    private double best = Double.NEGATIVE_INFINITY;

    private Search(Case board, Hypothesis base, Set<Term> focus, double logThreshold, BitSet barred) {
        this.board = board;
        this.base = base;
        this.focus = focus;
        this.logThreshold = logThreshold;
        this.barred = barred;
        likeliest = board.charges().likeliestLogOdds();
        Map<Term, Double> costs = board.costs(base);
        tolerance = new Tolerance(board, costs, focus);
        Branch first = new Branch(base, owed(costs), Double.POSITIVE_INFINITY);
        seen.add(new SetOfFaults(base.charged()));
        weighed.add(first);
        best = base.score();
        if (first.owed() > NOTHING_OWED) {
            open.add(first);
        }
    }

    private double owed(Map<Term, Double> costs) {
        double owed = 0;
        for (Map.Entry<Term, Double> cost : costs.entrySet()) {
            owed += tolerance.owed(cost.getKey(), cost.getValue());
        }
        return owed;
    }

    /** The best explanation of the focus. */
    static Hypothesis best(Case board, Hypothesis base, Set<Term> focus, Taste taste, Effort effort) {
        boolean lastingOnly = taste == Taste.LASTING;
        int mostExpanded = focus.size() == 1 ? effort.forOne() : effort.forAll();
        Searched.Question question =
                new Searched.Question(new SetOfFaults(base.charged()), focus, lastingOnly, mostExpanded);
        Searched.Found found = board.searched().known(question).orElseGet(() -> {
            Search search = new Search(
                    board, base, focus, 0, lastingOnly ? board.charges().loose() : NONE);
            boolean toItsEnd = search.run(mostExpanded, effort.isOverdue());
            Searched.Found made = new Searched.Found(search.result().best(), search.withFewest());
            if (toItsEnd) {
                board.searched().remember(question, made);
            }
            return made;
        });
        return taste == Taste.FEWEST ? found.fewest() : found.best();
    }

    private Hypothesis withFewest() {
        Hypothesis fewest = base;
        boolean any = false;
        for (Branch branch : weighed) {
            Hypothesis found = branch.hypothesis();
            if (branch.owed() < NOTHING_OWED && (!any || isBetterWithFewer(found, fewest))) {
                fewest = found;
                any = true;
            }
        }
        return fewest;
    }

    private static boolean isBetterWithFewer(Hypothesis one, Hypothesis other) {
        int more = one.charged().cardinality() - other.charged().cardinality();
        return more < 0 || (more == 0 && one.score() > other.score());
    }

    /** Every explanation of the focus that is not far less probable than the best; one of them is known. */
    static Result all(Case board, Hypothesis base, Set<Term> focus, Hypothesis known, Effort effort) {
        Search search = new Search(board, base, focus, LOG_THRESHOLD, NONE);
        search.seen.add(new SetOfFaults(known.charged()));
        search.add(known, search.owed(board.costs(known)));
        search.run(effort.forAll(), effort.isOverdue());
        return search.result();
    }

    /** Says whether it was not broken off. */
    private boolean run(int mostExpansions, BooleanSupplier isOverdue) {
        for (int expanded = 0; expanded < mostExpansions; expanded++) {
            if (isOverdue.getAsBoolean()) {
                return false;
            }
            Branch next = open.peek();
            if (next == null || next.bound() < best + logThreshold) {
                return true;
            }
            open.remove();
            expand(next);
        }
        return true;
    }

    private Result result() {
        List<Hypothesis> kept = new ArrayList<>();
        for (Branch branch : weighed) {
            if (branch.hypothesis().score() >= best + LOG_THRESHOLD) {
                kept.add(branch.hypothesis());
            }
        }
        kept.sort(Hypothesis.BEST_FIRST);
        double left = 0;
        for (Branch branch : open) {
            left += Math.exp(branch.bound() - best);
        }
        return new Result(kept, left);
    }

    private void add(Hypothesis hypothesis, double owed) {
        double bound =
                owed > NOTHING_OWED ? hypothesis.score() + RECOVERED * owed + likeliest : Double.NEGATIVE_INFINITY;
        boolean mayGrow = bound >= best + logThreshold
                && hypothesis.charged().cardinality() < base.charged().cardinality() + MOST_ADDED;
        if (mayGrow || hypothesis.score() >= best + LOG_THRESHOLD) {
            Branch branch = new Branch(hypothesis, owed, bound);
            weighed.add(branch);
            best = Math.max(best, hypothesis.score());
            if (mayGrow) {
                open.add(branch);
            }
        }
    }

    private void expand(Branch branch) {
        Hypothesis hypothesis = branch.hypothesis();
        Weights weights = board.weights(hypothesis.forecast());
        Map<Term, Double> costs = weights.costs();
        Suspicion suspicion = Suspicion.of(board, hypothesis, heaviest(costs));
        double forgiven = -branch.owed();
        for (double cost : costs.values()) {
            forgiven -= cost;
        }
        double cut = best + logThreshold;
        Change change = new Change();
        BitSet candidates = suspicion.candidates();
        candidates.andNot(barred);
        for (int fault = candidates.nextSetBit(0); fault >= 0; fault = candidates.nextSetBit(fault + 1)) {
            double prior = hypothesis.logPrior() + board.charges().logOdds(fault);
            double bestCase =
                    hypothesis.score() + branch.owed() + board.charges().logOdds(fault) + forgiven;
            if (bestCase < cut || !board.charges().canJoin(hypothesis.charged(), fault)) {
                continue;
            }
            SetOfFaults name = new SetOfFaults(hypothesis.charged(), fault);
            if (!seen.add(name)) {
                continue;
            }
            Forecast forecast = board.forecasts().with(hypothesis.charged(), hypothesis.forecast(), fault, name);
            if (!suspicion.isEased(hypothesis.forecast(), forecast, fault)) {
                continue;
            }
            weights.compare(forecast, tolerance, change);
            add(
                    new Hypothesis(
                            SetOfFaults.with(hypothesis.charged(), fault),
                            prior,
                            forecast,
                            hypothesis.logLikelihood() + change.cost()),
                    branch.owed() + change.owed());
        }
    }

    /** The term that is owed most, those in focus first. */
    private Term heaviest(Map<Term, Double> costs) {
        Optional<Map.Entry<Term, Double>> heaviest = Optional.empty();
        for (Map.Entry<Term, Double> cost : costs.entrySet()) {
            if (tolerance.owed(cost.getKey(), cost.getValue()) > NOTHING_OWED
                    && (heaviest.isEmpty() || isHeavier(cost, heaviest.get()))) {
                heaviest = Optional.of(cost);
            }
        }
        return heaviest.orElseThrow().getKey();
    }

    private boolean isHeavier(Map.Entry<Term, Double> one, Map.Entry<Term, Double> other) {
        boolean inFocus = focus.contains(one.getKey());
        return inFocus == focus.contains(other.getKey()) ? one.getValue() < other.getValue() : inFocus;
    }
}
