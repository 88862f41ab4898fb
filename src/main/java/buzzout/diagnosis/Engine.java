package buzzout.diagnosis;

import buzzout.plan.Plan;
import buzzout.session.Evidence;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Weighs evidence against the circuit model. Not safe for use by several threads.
 *
 * <p>It looks for the most probable explanation by explaining one term after another, starting from the last
 * explanation; then it takes each fault of that explanation out in turn and enumerates what else could stand in for it.
 */
public final class Engine {
    private static final int MOST_ROUNDS = 40;
    private static final Comparator<Map.Entry<Term, Double>> HEAVIEST_FIRST = Map.Entry.comparingByValue();

    private final Case board;
    private BitSet last = new BitSet();

    public Engine(Plan plan) {
        this(plan, Priors.judged());
    }

    public Engine(Plan plan, Priors priors) {
        board = new Case(plan, priors);
    }

    /** What is wrong, after this evidence. Fast when it only grew since the last call. */
    public Diagnosis weigh(Evidence evidence) {
        board.take(evidence);
        Hypothesis explanation = firstExplanation();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<Finding> findings = new ArrayList<>();
            Hypothesis better = explanation;
            double unexplored = 0;
            for (int fault : explanation.charged().stream().toArray()) {
                Hypothesis base = board.without(explanation, fault);
                Set<Term> duties = duties(base, explanation);
                Search.Result result = Search.all(board, base, duties);
                if (result.best().score() > better.score() + 1e-9) {
                    better = result.best();
                }
                findings.add(Findings.of(board, explanation, fault, base, duties, result));
                unexplored = Math.max(unexplored, Findings.unexplored(result));
            }
            if (better.charged().equals(explanation.charged())) {
                last = explanation.charged();
                findings.sort(Comparator.comparingDouble(Finding::probability).reversed());
                return new Diagnosis(findings, unexplored, Findings.troubles(board, explanation));
            }
            explanation = explain(better, Search.Taste.WHOLE, HEAVIEST_FIRST);
        }
        throw new IllegalStateException("explanations kept improving for " + MOST_ROUNDS + " rounds");
    }

    /** Without the faults that do not pay for themselves. */
    private Hypothesis thinned(Hypothesis start) {
        Hypothesis thin = start;
        for (int fault : start.charged().stream().toArray()) {
            Hypothesis without = board.without(thin, fault);
            if (without.score() >= thin.score()) {
                thin = without;
            }
        }
        return thin;
    }

    /** The last explanation still, if it explains the new evidence too; else the best of several ways of looking. */
    private Hypothesis firstExplanation() {
        Hypothesis same = thinned(board.weigh(last));
        if (board.costs(same).isEmpty()) {
            return same;
        }
        Hypothesis best = explain(same, Search.Taste.WHOLE, HEAVIEST_FIRST);
        Hypothesis nothing = board.weigh(new BitSet());
        for (Search.Taste taste : Search.Taste.values()) {
            for (Comparator<Map.Entry<Term, Double>> order : List.of(HEAVIEST_FIRST, HEAVIEST_FIRST.reversed())) {
                Hypothesis found = explain(nothing, taste, order);
                best = found.score() > best.score() ? found : best;
            }
        }
        return best;
    }

    private Hypothesis explain(Hypothesis start, Search.Taste taste, Comparator<Map.Entry<Term, Double>> order) {
        Hypothesis explanation = start;
        Set<Term> slips = new HashSet<>();
        while (true) {
            Optional<Term> owed = board.costs(explanation).entrySet().stream()
                    .filter(cost -> cost.getValue() < Slips.REPEAT && !slips.contains(cost.getKey()))
                    .min(order)
                    .map(Map.Entry::getKey);
            if (owed.isEmpty()) {
                return thinned(explanation);
            }
            Hypothesis found = Search.best(board, explanation, owed.get(), taste);
            if (found.score() <= explanation.score()) {
                slips.add(owed.get());
            } else {
                explanation = found;
            }
        }
    }

    /** What costs more when a fault is taken out of the explanation. */
    private Set<Term> duties(Hypothesis base, Hypothesis explanation) {
        Map<Term, Double> costs = board.costs(explanation);
        Set<Term> duties = new HashSet<>();
        board.costs(base).forEach((term, cost) -> {
            if (cost < costs.getOrDefault(term, 0.0) - 1e-9) {
                duties.add(term);
            }
        });
        return duties;
    }
}
