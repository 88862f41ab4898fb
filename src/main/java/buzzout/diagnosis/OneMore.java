package buzzout.diagnosis;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One fault more, of any kind and wherever it sits. It may pay for many slight costs, none of which is owed an
 * explanation by itself: a bridge that lets the keys of a loose row answer as those of its neighbour is no more than
 * repeats, one by one.
 */
final class OneMore {
    private OneMore() {}

    /** The start, or the start with the fault that pays best for itself. */
    static Hypothesis best(Case board, Hypothesis start) {
        double costs = board.costs(start).values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        Charges charges = board.charges();
        return IntStream.range(0, charges.count())
                .filter(fault -> charges.logOdds(fault) > costs && charges.canJoin(start.charged(), fault))
                .mapToObj(fault -> board.with(start, fault))
                .filter(more -> more.score() > start.score() + 1e-9)
                .min(Hypothesis.BEST_FIRST)
                .orElse(start);
    }

    /** Of the faults that tie or exchange nets, those few that account best for everything when each is the only one. */
    static List<Hypothesis> ofNets(Case board, int most) {
        Hypothesis nothing = board.weigh(new BitSet());
        return IntStream.range(0, board.charges().count())
                .filter(board.charges()::tiesNets)
                .mapToObj(fault -> board.with(nothing, fault))
                .sorted(Hypothesis.BEST_FIRST)
                .limit(most)
                .toList();
    }
}
