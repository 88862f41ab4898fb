package buzzout.diagnosis;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.BitSet;

/** Which further faults could change what a term says, under a hypothesis that does not explain it. */
final class Suspicion {
    private final Case board;
    private final Term term;
    private final BitSet candidates;

    private Suspicion(Case board, Term term, BitSet candidates) {
        this.board = board;
        this.term = term;
        this.candidates = candidates;
    }

    static Suspicion of(Case board, Hypothesis hypothesis, Term term) {
        Plan plan = board.plan();
        Forecast forecast = hypothesis.forecast();
        BitSet keys = new BitSet();
        long nets = 0;
        if (term instanceof Term.Quiet) {
            Pairs seen = board.ledger().quiet().orElse(Pairs.NONE);
            Reading quiet = board.readings().reading(forecast.quiet());
            nets = nets(plan, seen.minus(quiet.low()).plus(quiet.low().minus(seen)));
            keys.or(crossings(plan, nets));
        } else if (term instanceof Term.OfKey of) {
            Key key = plan.keys().get(of.key());
            keys.set(of.key());
            nets = 1L << key.row() | 1L << key.column() | nets(board, forecast, of.key());
            for (int answer : board.ledger().flexed(of.key())) {
                nets |= nets(board, answer);
            }
        } else if (term instanceof Term.OfTrial of) {
            Trial trial = board.forecasts().trials().get(of.trial());
            nets = trial.nets(plan) | nets(board, forecast, plan.keys().size() + of.trial());
            keys.or(trial instanceof Trial.Together together ? together.held() : crossings(plan, nets));
        } else if (term instanceof Term.OfAnswer of) {
            nets = nets(board, of.answer());
            keys.or(givers(plan, forecast, of.answer()));
            keys.or(board.ledger().came().get(of.answer()) ? around(plan, nets) : crossings(plan, nets));
            for (int key = keys.nextSetBit(0); key >= 0; key = keys.nextSetBit(key + 1)) {
                if (forecast.answer(key) == of.answer()) {
                    nets |= 1L << plan.keys().get(key).row()
                            | 1L << plan.keys().get(key).column();
                }
            }
        }
        return new Suspicion(board, term, board.charges().touching(keys, nets, hypothesis.charged()));
    }

    BitSet candidates() {
        return candidates;
    }

    /**
     * Whether one more fault brings the term nearer to an explanation. A fault of a net may do so by any change, for
     * another may complete it. A fault in one key must explain at once: whatever it needs beside it can be added first.
     */
    boolean isEased(Forecast before, Forecast after, int fault) {
        boolean atOnce = board.charges().inOneKey(fault);
        if (term instanceof Term.OfKey of) {
            return answersBetter(before, after, of.key(), atOnce);
        } else if (term instanceof Term.OfTrial of) {
            return answersBetter(before, after, board.plan().keys().size() + of.trial(), atOnce);
        } else if (term instanceof Term.OfAnswer of) {
            return comesNearer(before, after, of.answer(), atOnce);
        }
        return atOnce
                ? board.ledger().quietCost(after.quiet()) > board.ledger().quietCost(before.quiet())
                : before.quiet() != after.quiet();
    }

    private boolean answersBetter(Forecast before, Forecast after, int asked, boolean atOnce) {
        return atOnce
                ? board.ledger().askedCost(asked, after.answer(asked))
                        > board.ledger().askedCost(asked, before.answer(asked))
                : before.answer(asked) != after.answer(asked);
    }

    private boolean comesNearer(Forecast before, Forecast after, int wanted, boolean atOnce) {
        int keys = board.plan().keys().size();
        for (int key = before.differing(after, 0); key < keys; key = before.differing(after, key + 1)) {
            int is = after.answer(key);
            if (board.readings().chance(before.answer(key), wanted) > 0
                    || board.readings().chance(is, wanted) > 0
                    || (!atOnce && !board.readings().common(is, wanted).isEmpty())) {
                return true;
            }
        }
        return false;
    }

    private static BitSet givers(Plan plan, Forecast forecast, int answer) {
        BitSet givers = new BitSet();
        for (int key = 0; key < plan.keys().size(); key++) {
            givers.set(key, forecast.answer(key) == answer);
        }
        return givers;
    }

    private static BitSet crossings(Plan plan, long nets) {
        BitSet keys = new BitSet();
        plan.keys().forEach(key -> keys.set(key.index(), (nets >>> key.row() & nets >>> key.column() & 1) != 0));
        return keys;
    }

    private static BitSet around(Plan plan, long nets) {
        BitSet keys = new BitSet();
        plan.keys().forEach(key -> keys.set(key.index(), ((nets >>> key.row() | nets >>> key.column()) & 1) != 0));
        return keys;
    }

    /** The nets on which a key or a trial should answer, and those on which it did. */
    private static long nets(Case board, Forecast forecast, int asked) {
        long nets = nets(board, forecast.answer(asked));
        for (int answer : board.ledger().meant(asked)) {
            nets |= nets(board, answer);
        }
        return nets;
    }

    private static long nets(Case board, int answer) {
        Reading reading = board.readings().reading(answer);
        return nets(board.plan(), reading.low().plus(reading.between()));
    }

    private static long nets(Plan plan, Pairs pairs) {
        long nets = 0;
        for (Pair pair : pairs.list()) {
            nets |= 1L << pair.low() | 1L << pair.reads();
        }
        return nets & -1L >>> (Long.SIZE - plan.nets().size());
    }
}
