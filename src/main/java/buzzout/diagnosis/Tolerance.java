package buzzout.diagnosis;

import java.util.Map;
import java.util.Set;

/** How much each term may cost without being owed: what it costs a search's base, outside of the search's focus. */
final class Tolerance {
    private final Map<Term, Double> costs;
    private final double ofQuiet;
    private final double[] ofKey;
    private final double[] ofTrial;

    Tolerance(Case board, Map<Term, Double> baseCosts, Set<Term> focus) {
        costs = new java.util.HashMap<>(baseCosts);
        costs.keySet().removeAll(focus);
        ofQuiet = costs.getOrDefault(new Term.Quiet(), 0.0);
        ofKey = new double[board.plan().keys().size()];
        for (int key = 0; key < ofKey.length; key++) {
            ofKey[key] = costs.getOrDefault(new Term.OfKey(key), 0.0);
        }
        ofTrial = new double[board.forecasts().trials().size()];
        for (int trial = 0; trial < ofTrial.length; trial++) {
            ofTrial[trial] = costs.getOrDefault(new Term.OfTrial(trial), 0.0);
        }
    }

    double ofQuiet() {
        return ofQuiet;
    }

    double ofKey(int key) {
        return ofKey[key];
    }

    double ofTrial(int trial) {
        return ofTrial[trial];
    }

    double ofAnswer(int answer) {
        return costs.getOrDefault(new Term.OfAnswer(answer), 0.0);
    }

    /** How much of a cost is owed an explanation; a mere repeat is too slight to be. */
    static double owed(double tolerated, double cost) {
        return cost >= Slips.REPEAT ? 0 : Math.max(0, tolerated - cost);
    }

    double owed(Term term, double cost) {
        if (term instanceof Term.OfKey of) {
            return owed(ofKey(of.key()), cost);
        } else if (term instanceof Term.OfTrial of) {
            return owed(ofTrial(of.trial()), cost);
        } else if (term instanceof Term.OfAnswer of) {
            return owed(ofAnswer(of.answer()), cost);
        }
        return owed(ofQuiet, cost);
    }
}
