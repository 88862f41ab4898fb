package buzzout.diagnosis;

import java.util.BitSet;
import java.util.List;
import java.util.Set;

/** Which keys should be pressed once more, because a slip of the finger explains them about as well as a fault does. */
final class Again {
    /** A finding this sure needs no more presses; a press is cheap beside a repair in the wrong place. Judgement. */
    static final double SURE = 0.99;

    private Again() {}

    /** One for each thing that is in doubt, by index. */
    static List<Integer> keys(Case board, Hypothesis explanation, List<Strand> strands, List<Finding> findings) {
        BitSet again = new BitSet();
        board.costs(explanation).forEach((term, cost) -> {
            if (cost < Slips.REPEAT) {
                again.or(uncalled(board, term, explanation.forecast()));
            }
        });
        for (int index = 0; index < strands.size(); index++) {
            if (findings.get(index).probability() < SURE) {
                first(board, strands.get(index).duties(), strands.get(index).base())
                        .ifPresent(again::set);
            }
        }
        return again.stream().boxed().toList();
    }

    /** The first key that gave cause for a finding and was never called. */
    static java.util.OptionalInt first(Case board, Set<Term> duties, Hypothesis base) {
        return duties.stream()
                .flatMapToInt(term -> uncalled(board, term, base.forecast()).stream())
                .min();
    }

    /** The keys that a term is about and that were never called. */
    private static BitSet uncalled(Case board, Term term, Forecast forecast) {
        BitSet keys = new BitSet();
        if (term instanceof Term.OfKey of) {
            keys.set(of.key(), !board.ledger().isCalled(of.key()));
        } else if (term instanceof Term.OfAnswer of && !board.ledger().came().get(of.answer())) {
            for (int key = 0; key < forecast.keys(); key++) {
                keys.set(
                        key,
                        forecast.answer(key) == of.answer() && !board.ledger().isNamed(key));
            }
        }
        return keys;
    }
}
