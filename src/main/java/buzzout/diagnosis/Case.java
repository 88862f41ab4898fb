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
    private Searched searched = new Searched();

    Case(Plan plan, Priors priors) {
        this(new Forecasts(plan, priors));
    }

    Case(Forecasts forecasts) {
        this.forecasts = forecasts;
        charges = forecasts.charges();
        ledger = new Ledger(forecasts, charges.plan(), Evidence.NONE);
    }

    /** Whether hypotheses weighed before can be weighed again: not when something new was tried. */
    boolean take(Evidence evidence) {
        int tried = forecasts.trials().size();
        ledger = new Ledger(forecasts, plan(), evidence);
        forgetSearches();
        return tried == forecasts.trials().size();
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

    /** What was searched for already in this look. */
    Searched searched() {
        return searched;
    }

    /** They hold under one evidence only, and take room that nobody needs after a look. */
    void forgetSearches() {
        searched = new Searched();
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
        return new Hypothesis(
                charged, charges.logOdds(charged), forecast, weights(forecast).total());
    }

    /** The same hypothesis under the evidence at hand. */
    Hypothesis again(Hypothesis hypothesis) {
        return new Hypothesis(
                hypothesis.charged(),
                hypothesis.logPrior(),
                hypothesis.forecast(),
                weights(hypothesis.forecast()).total());
    }

    Hypothesis with(Hypothesis hypothesis, int fault) {
        BitSet added = new BitSet();
        added.set(fault);
        return with(hypothesis, added);
    }

    Hypothesis with(Hypothesis hypothesis, BitSet added) {
        BitSet charged = (BitSet) hypothesis.charged().clone();
        Forecast forecast = hypothesis.forecast();
        for (int fault = added.nextSetBit(0); fault >= 0; fault = added.nextSetBit(fault + 1)) {
            forecast = forecasts.with(charged, forecast, fault);
            charged.set(fault);
        }
        return new Hypothesis(
                charged, charges.logOdds(charged), forecast, weights(forecast).total());
    }

    Hypothesis exchanged(Hypothesis hypothesis, BitSet gone, BitSet added) {
        if (!hypothesis.charged().intersects(gone)) {
            return with(hypothesis, added);
        }
        BitSet left = (BitSet) hypothesis.charged().clone();
        left.andNot(gone);
        return with(weigh(left), added);
    }

    Hypothesis without(Hypothesis hypothesis, int fault) {
        return weigh(SetOfFaults.without(hypothesis.charged(), fault));
    }
}
