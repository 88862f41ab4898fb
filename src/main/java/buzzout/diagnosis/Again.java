package buzzout.diagnosis;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

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
                again.or(read(board, term));
                again.or(leftOut(board, term, explanation.forecast()));
            }
        });
        for (int index = 0; index < strands.size(); index++) {
            first(board, strands.get(index), findings.get(index).probability()).ifPresent(again::set);
        }
        List<Integer> keys = new ArrayList<>();
        for (int key = again.nextSetBit(0); key >= 0; key = again.nextSetBit(key + 1)) {
            keys.add(key);
        }
        return keys;
    }

    /** The sentence that asks for the first of a finding's keys. */
    static Optional<String> sentence(Case board, Strand strand, double probability) {
        OptionalInt first = first(board, strand, probability);
        return first.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "press " + board.plan().keys().get(first.getAsInt()).spoken()
                                + " once more, by itself: if it answers as before, that was no slip of the finger");
    }

    private static OptionalInt first(Case board, Strand strand, double probability) {
        BitSet unsure = new BitSet();
        if (probability < SURE) {
            for (Term term : strand.duties()) {
                unsure.or(unsure(board, term, strand.base().forecast()));
            }
        }
        return unsure.isEmpty() ? OptionalInt.empty() : OptionalInt.of(unsure.nextSetBit(0));
    }

    /** The keys of a term that had a turn in a read-through, clear or not, and were never called. */
    private static BitSet unsure(Case board, Term term, Forecast forecast) {
        return board.ledger().hasReadThrough() && term instanceof Term.OfAnswer
                ? leftOut(board, term, forecast)
                : read(board, term);
    }

    /** The key that a term is about, where it was read and never called. */
    private static BitSet read(Case board, Term term) {
        BitSet keys = new BitSet();
        if (term instanceof Term.OfKey of) {
            keys.set(of.key(), board.ledger().isOnlyRead(of.key()));
        }
        return keys;
    }

    /** The keys that would have given an answer that never came, although every key is said to have been pressed. */
    private static BitSet leftOut(Case board, Term term, Forecast forecast) {
        BitSet keys = new BitSet();
        if (term instanceof Term.OfAnswer of && !board.ledger().came().get(of.answer())) {
            for (int key = 0; key < board.plan().keys().size(); key++) {
                keys.set(
                        key,
                        forecast.answer(key) == of.answer() && !board.ledger().isNamed(key));
            }
        }
        return keys;
    }
}
