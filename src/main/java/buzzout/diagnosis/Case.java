package buzzout.diagnosis;

import buzzout.plan.Plan;
import buzzout.session.Evidence;
import java.util.BitSet;
import java.util.Map;

/** A board's charges, their forecasts and the evidence at hand. */
final class Case {
    private final Charges charges;
    private final Forecasts forecasts;
    private Ledger ledger;

    Case(Plan plan, Priors priors) {
        charges = new Charges(plan, priors);
        forecasts = new Forecasts(charges);
        ledger = new Ledger(forecasts.readings(), plan.keys().size(), Evidence.NONE);
    }

    void take(Evidence evidence) {
        ledger = new Ledger(forecasts.readings(), plan().keys().size(), evidence);
    }

    Plan plan() {
        return charges.plan();
    }

    Charges charges() {
        return charges;
    }

    Forecasts forecasts() {
        return forecasts;
    }

    Readings readings() {
        return forecasts.readings();
    }

    Ledger ledger() {
        return ledger;
    }

    Weights weights(Forecast forecast) {
        return new Weights(ledger, readings(), forecast);
    }

    Map<Term, Double> costs(Hypothesis hypothesis) {
        return weights(hypothesis.forecast()).costs();
    }

    Hypothesis weigh(BitSet charged) {
        Forecast forecast = forecasts.of(charged);
        double cost = weights(forecast).costs().values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        return new Hypothesis(charged, charges.logOdds(charged), forecast, cost);
    }

    Hypothesis without(Hypothesis hypothesis, int fault) {
        BitSet charged = (BitSet) hypothesis.charged().clone();
        charged.clear(fault);
        return weigh(charged);
    }
}
