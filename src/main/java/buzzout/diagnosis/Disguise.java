package buzzout.diagnosis;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.NetKind;
import java.util.BitSet;
import java.util.Set;

/**
 * Two faults of nets that together make many keys of one net look misplaced, although each alone would look quite
 * different: an open net whose far part is bridged to its neighbour.
 *
 * <p>All pairs of the faults on the nets concerned are weighed: with n of them, n²/2 forecasts.
 */
final class Disguise {
    /** Fewer alike terms are cheaper to explain one by one. */
    static final int FEWEST_TERMS = 3;

    private Disguise() {}

    /** The start, or the start with the pair that accounts best for everything. */
    static Hypothesis best(Case board, Hypothesis start, Set<Term> alike) {
        BitSet candidates = board.charges().onNets(netsInMost(board, alike));
        candidates.andNot(board.charges().loose());
        Tolerance any = new Tolerance(board, board.costs(start), Set.of());
        Weights weights = board.weights(start.forecast());
        Change change = new Change();
        Hypothesis best = start;
        for (int one = candidates.nextSetBit(0); one >= 0; one = candidates.nextSetBit(one + 1)) {
            if (!board.charges().canJoin(start.charged(), one)) {
                continue;
            }
            BitSet withOne = (BitSet) start.charged().clone();
            withOne.set(one);
            Forecast ofOne = board.forecasts().with(start.charged(), start.forecast(), one);
            for (int two = candidates.nextSetBit(one + 1); two >= 0; two = candidates.nextSetBit(two + 1)) {
                if (!board.charges().canJoin(withOne, two)) {
                    continue;
                }
                Forecast ofBoth = board.forecasts().with(withOne, ofOne, two);
                weights.compare(ofBoth, any, change);
                double prior = start.logPrior()
                        + board.charges().logOdds(one)
                        + board.charges().logOdds(two);
                if (prior + start.logLikelihood() + change.cost() > best.score()) {
                    BitSet both = (BitSet) withOne.clone();
                    both.set(two);
                    best = new Hypothesis(both, prior, ofBoth, start.logLikelihood() + change.cost());
                }
            }
        }
        return best;
    }

    /** The nets that most of these keys sit on or answer with. */
    private static long netsInMost(Case board, Set<Term> alike) {
        int[] count = new int[Long.SIZE];
        int keys = 0;
        for (Term term : alike) {
            if (term instanceof Term.OfKey of) {
                keys++;
                for (long nets = nets(board, of.key()); nets != 0; nets &= nets - 1) {
                    count[Long.numberOfTrailingZeros(nets)]++;
                }
            }
        }
        long most = 0;
        for (int net = 0; net < board.plan().nets().size(); net++) {
            most |= 2 * count[net] > keys ? 1L << net : 0;
        }
        return most;
    }

    private static long nets(Case board, int key) {
        long nets = 0;
        for (NetKind kind : NetKind.values()) {
            nets |= 1L << board.plan().keys().get(key).net(kind);
        }
        for (int answer : board.ledger().meant(key)) {
            Pairs pairs = board.readings().reading(answer).low();
            for (Pair pair : pairs.list()) {
                nets |= 1L << pair.low() | 1L << pair.reads();
            }
        }
        return nets;
    }
}
