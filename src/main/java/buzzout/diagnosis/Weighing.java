package buzzout.diagnosis;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.Map;

/** Turns sets of charged faults into hypotheses weighed against one tally, and remembers forecasts between tallies. */
final class Weighing {
    private static final int MOST_FORECASTS = 20_000;

    private final Charges charges;
    private final Map<BitSet, Forecast> forecasts = new LinkedHashMap<>(1024, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<BitSet, Forecast> eldest) {
            return size() > MOST_FORECASTS;
        }
    };
    private Tally tally = Tally.of(buzzout.session.Evidence.NONE);

    Weighing(Charges charges) {
        this.charges = charges;
    }

    Charges charges() {
        return charges;
    }

    void take(Tally next) {
        tally = next;
    }

    Tally tally() {
        return tally;
    }

    Hypothesis weigh(BitSet charged) {
        Forecast forecast = forecasts.get(charged);
        if (forecast == null) {
            forecast = Forecast.of(charges.plan(), charges.faults(charged));
            forecasts.put((BitSet) charged.clone(), forecast);
        }
        return new Hypothesis(charged, charges.logOdds(charged), forecast, Account.of(tally, forecast));
    }

    Hypothesis with(Hypothesis base, int fault) {
        BitSet charged = (BitSet) base.charged().clone();
        charged.set(fault);
        return weigh(charged);
    }

    Hypothesis without(Hypothesis base, int fault) {
        BitSet charged = (BitSet) base.charged().clone();
        charged.clear(fault);
        return weigh(charged);
    }
}
