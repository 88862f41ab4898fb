package buzzout.diagnosis;

import java.util.BitSet;
import java.util.Comparator;

/**
 * A set of charged faults, weighed.
 *
 * @param charged numbers of faults; never changed
 * @param logPrior the logarithm of the odds of all of them
 * @param logLikelihood the sum of the costs of all terms
 */
record Hypothesis(BitSet charged, double logPrior, Forecast forecast, double logLikelihood) {
    static final Comparator<Hypothesis> BEST_FIRST = (one, other) -> Double.compare(other.score(), one.score());

    /** The logarithm of its weight against a faultless board that explains everything. */
    double score() {
        return logPrior + logLikelihood;
    }
}
