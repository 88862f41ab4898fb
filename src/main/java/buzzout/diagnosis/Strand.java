package buzzout.diagnosis;

import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One fault of an explanation, with everything that could stand in for it.
 *
 * @param base the explanation without the fault
 * @param duties the terms that cost more without it
 * @param result what explains those terms in its place
 */
record Strand(int fault, Hypothesis base, Set<Term> duties, Search.Result result) {
    static Strand of(Case board, Hypothesis explanation, int fault, Effort effort) {
        Hypothesis base = board.without(explanation, fault);
        Map<Term, Double> costs = board.costs(explanation);
        Set<Term> duties = duties(board, base, costs);
        Set<Term> focus = new HashSet<>(costs.keySet());
        focus.addAll(duties);
        return new Strand(fault, base, duties, Search.all(board, base, focus, explanation, effort));
    }

    /** The same strand after evidence that the explanation expected: others can only have lost weight. */
    Strand again(Case board, Hypothesis explanation) {
        List<Hypothesis> weighed = result.weighed().stream()
                .map(board::again)
                .sorted(Hypothesis.BEST_FIRST)
                .toList();
        Set<Term> dutiesNow = duties(board, base, board.costs(explanation));
        return new Strand(fault, base, dutiesNow, new Search.Result(weighed, result.unexplored()));
    }

    /** The same strand beside other faults than before. */
    Strand beside(Case board, Hypothesis explanation, BitSet added, BitSet gone) {
        Hypothesis now = board.exchanged(base, gone, added);
        List<Hypothesis> weighed = result.weighed().stream()
                .filter(hypothesis ->
                        added.stream().allMatch(other -> board.charges().canJoin(hypothesis.charged(), other)))
                .map(hypothesis -> board.exchanged(hypothesis, gone, added))
                .sorted(Hypothesis.BEST_FIRST)
                .toList();
        Set<Term> dutiesNow = duties(board, now, board.costs(explanation));
        return new Strand(fault, now, dutiesNow, new Search.Result(weighed, result.unexplored()));
    }

    /** Whether the fault is still in anything worth telling: not where what stands in for it is far more probable. */
    boolean holdsItsFault() {
        for (Hypothesis hypothesis : result.weighed()) {
            if (hypothesis.charged().get(fault)) {
                return true;
            }
        }
        return false;
    }

    /** At most how much of the probability was left unexplored. */
    double unexplored() {
        return Findings.unexplored(result);
    }

    private static Set<Term> duties(Case board, Hypothesis base, Map<Term, Double> costs) {
        Set<Term> duties = new LinkedHashSet<>();
        board.costs(base).forEach((term, cost) -> {
            if (cost < costs.getOrDefault(term, 0.0) - 1e-9) {
                duties.add(term);
            }
        });
        return duties;
    }
}
