package buzzout.diagnosis;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * An explanation with one more fault that ties or exchanges nets on which it has faults already. Such a fault seldom
 * pays for itself alone: what sits on its nets must then be read otherwise, or one more joint there be open.
 */
final class Retied {
    private Retied() {}

    /** Those few that account best for everything. */
    static List<Hypothesis> of(Case board, Hypothesis explanation, int most) {
        Charges charges = board.charges();
        long nets = explanation.charged().stream().mapToLong(charges::nets).reduce(0, (some, others) -> some | others);
        return IntStream.range(0, charges.count())
                .filter(fault -> charges.tiesNets(fault) && (charges.nets(fault) & nets) != 0)
                .boxed()
                .flatMap(fault -> Stream.concat(inPlace(board, explanation, fault), inPair(board, explanation, fault)))
                .sorted(Hypothesis.BEST_FIRST)
                .limit(most)
                .toList();
    }

    /** The fault instead of all that sits on its nets. */
    private static Stream<Hypothesis> inPlace(Case board, Hypothesis explanation, int fault) {
        Charges charges = board.charges();
        BitSet elsewhere = new BitSet();
        explanation.charged().stream()
                .filter(other -> (charges.nets(other) & charges.nets(fault)) == 0)
                .forEach(elsewhere::set);
        boolean mayBeBetter = charges.logOdds(elsewhere) + charges.logOdds(fault) > explanation.score();
        return mayBeBetter && charges.canJoin(elsewhere, fault)
                ? Stream.of(board.with(board.weigh(elsewhere), fault))
                : Stream.empty();
    }

    /** The fault beside all that is charged, with one more on its nets, where both could pay for themselves. */
    private static Stream<Hypothesis> inPair(Case board, Hypothesis explanation, int fault) {
        Charges charges = board.charges();
        double most = charges.logOdds(fault) - explanation.logLikelihood();
        if (most + charges.likeliestLogOdds() <= 0 || !charges.canJoin(explanation.charged(), fault)) {
            return Stream.empty();
        }
        Hypothesis tied = board.with(explanation, fault);
        return charges.onNets(charges.nets(fault)).stream()
                .filter(other -> most + charges.logOdds(other) > 0 && charges.canJoin(tied.charged(), other))
                .mapToObj(other -> board.with(tied, other))
                .min(Hypothesis.BEST_FIRST)
                .stream();
    }
}
