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
 * <p>It looks for the most probable explanation by explaining one unexplained atom after another, starting from the last
 * explanation; then it takes each fault of that explanation out in turn and enumerates what else could stand in for it.
 */
public final class Engine {
    private static final int MOST_ROUNDS = 40;
    private static final Comparator<Map.Entry<Atom, Double>> HEAVIEST_FIRST = Map.Entry.comparingByValue();

    private final Weighing weighing;
    private BitSet last = new BitSet();

    public Engine(Plan plan) {
        this(plan, Priors.judged());
    }

    public Engine(Plan plan, Priors priors) {
        weighing = new Weighing(new Charges(plan, priors));
    }

    /** What is wrong, after this evidence. Fast when it only grew since the last call. */
    public Diagnosis weigh(Evidence evidence) {
        weighing.take(evidence);
        Hypothesis explanation = firstExplanation();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<Finding> findings = new ArrayList<>();
            Hypothesis better = explanation;
            double unexplored = 0;
            for (int fault : explanation.charged().stream().toArray()) {
                Hypothesis base = weighing.without(explanation, fault);
                Search.Result result = Search.all(weighing, base, duties(base, explanation));
                if (result.best().score() > better.score() + 1e-9) {
                    better = result.best();
                }
                findings.add(Findings.of(weighing, explanation, fault, base, result));
                unexplored = Math.max(unexplored, Findings.unexplored(result));
            }
            if (better.charged().equals(explanation.charged())) {
                last = explanation.charged();
                findings.sort(Comparator.comparingDouble(Finding::probability).reversed());
                return new Diagnosis(findings, unexplored, Findings.troubles(weighing, explanation));
            }
            explanation = explain(better, Search.Taste.WHOLE, HEAVIEST_FIRST);
        }
        throw new IllegalStateException("explanations kept improving for " + MOST_ROUNDS + " rounds");
    }

    /** Without the faults of the last explanation that no longer pay for themselves. */
    private Hypothesis thinned(Hypothesis start) {
        Hypothesis thin = start;
        for (int fault : start.charged().stream().toArray()) {
            Hypothesis without = weighing.without(thin, fault);
            if (without.score() >= thin.score()) {
                thin = without;
            }
        }
        return thin;
    }

    /** The last explanation still, if it explains the new evidence too; else the best of several ways of looking. */
    private Hypothesis firstExplanation() {
        Hypothesis same = thinned(weighing.weigh(last));
        if (same.account().unexplained().isEmpty()) {
            return same;
        }
        Hypothesis best = explain(same, Search.Taste.WHOLE, HEAVIEST_FIRST);
        Hypothesis nothing = weighing.weigh(new BitSet());
        for (Search.Taste taste : Search.Taste.values()) {
            for (Comparator<Map.Entry<Atom, Double>> order : List.of(HEAVIEST_FIRST, HEAVIEST_FIRST.reversed())) {
                Hypothesis found = explain(nothing, taste, order);
                best = found.score() > best.score() ? found : best;
            }
        }
        return best;
    }

    private Hypothesis explain(Hypothesis start, Search.Taste taste, Comparator<Map.Entry<Atom, Double>> order) {
        Hypothesis explanation = start;
        Set<Atom> slips = new HashSet<>();
        while (true) {
            Optional<Atom> owed = explanation.account().unexplained().entrySet().stream()
                    .filter(entry -> !slips.contains(entry.getKey()))
                    .min(order)
                    .map(Map.Entry::getKey);
            if (owed.isEmpty()) {
                return thinned(explanation);
            }
            Hypothesis found = Search.best(weighing, explanation, owed.get(), taste);
            if (found.score() <= explanation.score()) {
                slips.add(owed.get());
            } else {
                explanation = found;
            }
        }
    }

    /** What goes unexplained when a fault is taken out of the explanation. */
    private static Set<Atom> duties(Hypothesis base, Hypothesis explanation) {
        Set<Atom> duties = new HashSet<>(base.account().unexplained().keySet());
        duties.removeAll(explanation.account().unexplained().keySet());
        return duties;
    }
}
