package buzzout.diagnosis;

import buzzout.circuit.Fault;
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
    private static final int MOST_ROUNDS = 8;
    private static final Comparator<Map.Entry<Term, Double>> HEAVIEST_FIRST = Map.Entry.comparingByValue();

    private final Case board;
    Hypothesis explanation;
    private List<Strand> strands = List.of();
    private Optional<Exhaustive> exhaustive = Optional.empty();

    public Engine(Plan plan) {
        this(plan, Priors.judged());
    }

    public Engine(Plan plan, Priors priors) {
        board = new Case(plan, priors);
        explanation = board.weigh(new BitSet());
    }

    /** What is wrong, after this evidence. Fast when it only grew since the last call. */
    public Diagnosis weigh(Evidence evidence) {
        boolean otherJoints = board.take(evidence);
        exhaustive = Exhaustive.of(board);
        Hypothesis again = otherJoints ? board.weigh(explanation.charged()) : board.again(explanation);
        strands = otherJoints ? List.of() : strands;
        boolean asExpected = !otherJoints && Math.abs(again.logLikelihood() - explanation.logLikelihood()) < 1e-9;
        explanation = again;
        strands = asExpected
                ? strands.stream()
                        .map(strand -> strand.again(board, explanation))
                        .toList()
                : unravelled();
        List<Findings.Told> told = strands.stream()
                .map(strand -> strand.told(board, explanation, exhaustive))
                .sorted(Comparator.<Findings.Told>comparingDouble(
                                each -> each.finding().probability())
                        .reversed())
                .toList();
        List<Finding> findings = told.stream().map(Findings.Told::finding).toList();
        List<NextStep> next = NextSteps.ranked(told.stream()
                .map(Findings.Told::settle)
                .flatMap(Optional::stream)
                .toList());
        double unexplored = exhaustive.isPresent()
                ? 0
                : strands.stream().mapToDouble(Strand::unexplored).max().orElse(0);
        return new Diagnosis(findings, unexplored, Findings.troubles(board, explanation), next);
    }

    /** The faults of the best explanation that the last weighing found. */
    List<Fault> explanation() {
        return board.charges().faults(explanation.charged());
    }

    /** Finds the best explanation, and for each of its faults what could stand in for it. */
    private List<Strand> unravelled() {
        List<Strand> known = strands;
        BitSet before = explanation.charged();
        explanation = firstExplanation();
        for (int round = 0; ; round++) {
            List<Strand> found = new ArrayList<>();
            Hypothesis better = explanation;
            for (int fault : explanation.charged().stream().toArray()) {
                Strand strand = strand(known, before, fault);
                if (strand.result().best().score() > better.score() + 1e-9) {
                    better = strand.result().best();
                }
                found.add(strand);
            }
            if (better.charged().equals(explanation.charged()) || round == MOST_ROUNDS) {
                return found;
            }
            known = found;
            before = explanation.charged();
            explanation = explain(better, Search.Taste.WHOLE, HEAVIEST_FIRST);
        }
    }

    /** A strand for a fault of the explanation; a known one where only faults on other nets were added since. */
    private Strand strand(List<Strand> known, BitSet before, int fault) {
        BitSet added = (BitSet) explanation.charged().clone();
        added.andNot(before);
        BitSet gone = (BitSet) before.clone();
        gone.andNot(explanation.charged());
        boolean apart = gone.isEmpty()
                && added.stream()
                        .allMatch(other ->
                                (board.charges().nets(other) & board.charges().nets(fault)) == 0);
        return known.stream()
                .filter(strand -> apart && strand.fault() == fault)
                .findFirst()
                .map(strand -> strand.beside(board, explanation, added))
                .filter(strand -> !strand.result().weighed().isEmpty())
                .orElseGet(() -> Strand.of(board, explanation, fault));
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
        Hypothesis same = thinned(explanation);
        if (board.costs(same).isEmpty()) {
            return same;
        }
        Hypothesis best = explain(same, Search.Taste.WHOLE, HEAVIEST_FIRST);
        if (isOneMore(best)) {
            return best;
        }
        if (exhaustive.isPresent()) {
            Hypothesis found = explain(exhaustive.get().best(), Search.Taste.WHOLE, HEAVIEST_FIRST);
            best = found.score() > best.score() ? found : best;
        }
        Hypothesis nothing = board.weigh(new BitSet());
        for (Search.Taste taste : Search.Taste.values()) {
            for (Comparator<Map.Entry<Term, Double>> order : List.of(HEAVIEST_FIRST, HEAVIEST_FIRST.reversed())) {
                Hypothesis found = explain(nothing, taste, order);
                best = found.score() > best.score() ? found : best;
            }
        }
        return best;
    }

    /** Whether one more fault at most explains all that is new, and nothing hints at a disguise. */
    private boolean isOneMore(Hypothesis found) {
        return exhaustive.isEmpty()
                && found.charged().cardinality() <= explanation.charged().cardinality() + 1
                && board.costs(found).isEmpty()
                && board.charges().mostInKeysOfOneNet(found.charged()) < Disguise.FEWEST_TERMS;
    }

    private Hypothesis explain(Hypothesis start, Search.Taste taste, Comparator<Map.Entry<Term, Double>> order) {
        Hypothesis sofar = start;
        Set<Term> slips = new HashSet<>();
        while (true) {
            Optional<Term> owed = board.costs(sofar).entrySet().stream()
                    .filter(cost -> cost.getValue() < Slips.REPEAT && !slips.contains(cost.getKey()))
                    .min(order)
                    .map(Map.Entry::getKey);
            if (owed.isEmpty()) {
                return thinned(sofar);
            }
            Hypothesis found = best(sofar, owed.get(), taste);
            if (found.score() <= sofar.score()) {
                slips.add(owed.get());
            } else {
                sofar = found;
            }
        }
    }

    /** Of a term explained alone, with those on its row, and with those on its column: whatever explains best. */
    private Hypothesis best(Hypothesis start, Term term, Search.Taste taste) {
        Hypothesis best = Search.best(board, start, Set.of(term), taste);
        for (Set<Term> alike : Alike.terms(board, start, term)) {
            Hypothesis found = Search.best(board, start, alike, taste);
            best = found.score() > best.score() ? found : best;
            if (alike.size() >= Disguise.FEWEST_TERMS && !isClean(start, best, alike)) {
                Hypothesis pair = Disguise.best(board, start, alike);
                best = pair.score() > best.score() ? pair : best;
            }
        }
        return best;
    }

    /** Whether a hypothesis explains all these terms and leaves no new ones unexplained. */
    private boolean isClean(Hypothesis start, Hypothesis found, Set<Term> terms) {
        Set<Term> tolerated = new HashSet<>(board.costs(start).keySet());
        tolerated.removeAll(terms);
        return tolerated.containsAll(board.costs(found).keySet());
    }
}
