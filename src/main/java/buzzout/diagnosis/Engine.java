package buzzout.diagnosis;

import buzzout.plan.Plan;
import buzzout.session.Evidence;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Weighs evidence against the circuit model. Not safe for use by several threads.
 *
 * <p>It looks for the most probable explanation by explaining one unexplained atom after another, starting from the last
 * explanation; then it takes each fault of that explanation out in turn and enumerates what else could stand in for it.
 */
public final class Engine {
    private static final int MOST_ROUNDS = 40;

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
        Hypothesis explanation = explain(thinned(weighing.weigh(last)));
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
            explanation = explain(better);
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

    private Hypothesis explain(Hypothesis start) {
        Hypothesis explanation = start;
        Set<Atom> slips = new HashSet<>();
        while (true) {
            Set<Atom> owed = new HashSet<>(explanation.account().unexplained().keySet());
            owed.removeAll(slips);
            if (owed.isEmpty()) {
                return thinned(explanation);
            }
            Atom atom = heaviest(explanation, owed);
            Hypothesis found = Search.best(weighing, explanation, Set.of(atom));
            if (found.score() <= explanation.score()) {
                slips.add(atom);
            } else {
                explanation = found;
            }
        }
    }

    private static Atom heaviest(Hypothesis explanation, Set<Atom> owed) {
        return explanation.account().unexplained().entrySet().stream()
                .filter(entry -> owed.contains(entry.getKey()))
                .min(java.util.Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }

    /** What goes unexplained when a fault is taken out of the explanation. */
    private static Set<Atom> duties(Hypothesis base, Hypothesis explanation) {
        Set<Atom> duties = new HashSet<>(base.account().unexplained().keySet());
        duties.removeAll(explanation.account().unexplained().keySet());
        return duties;
    }
}
