package buzzout.diagnosis;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.Layout;
import buzzout.plan.Key;
import buzzout.session.Evidence;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns sets of charged faults into hypotheses weighed against one tally, and remembers forecasts between tallies. */
final class Weighing {
    private static final int MOST_FORECASTS = 20_000;

    private final Charges charges;
    private final Layout layout;
    private final List<Key> keys;
    private final Readings readings = new Readings();
    private final Map<BitSet, Forecast> forecasts = new LinkedHashMap<>(1024, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<BitSet, Forecast> eldest) {
            return size() > MOST_FORECASTS;
        }
    };
    private Tally tally = Tally.NOTHING;

    Weighing(Charges charges) {
        this.charges = charges;
        layout = new Layout(charges.plan());
        keys = charges.plan().keys();
    }

    Charges charges() {
        return charges;
    }

    Readings readings() {
        return readings;
    }

    Tally tally() {
        return tally;
    }

    void take(Evidence evidence) {
        tally = Tally.of(readings, evidence);
    }

    Circuit circuit(BitSet charged) {
        return Circuit.of(layout, charges.faults(charged));
    }

    Hypothesis weigh(BitSet charged) {
        Forecast forecast = forecasts.get(charged);
        if (forecast == null) {
            forecast = remembered(charged, Forecast.of(readings, keys, circuit(charged)));
        }
        return hypothesis(charged, forecast);
    }

    /** The base with one more fault, whose circuit is at hand. */
    Hypothesis weigh(Hypothesis base, int fault, BitSet charged, Circuit circuit) {
        Forecast known = forecasts.get(charged);
        Forecast forecast = known != null
                ? known
                : remembered(
                        charged,
                        base.forecast().changed(readings, keys, circuit, charges.affected(base.charged(), fault)));
        return hypothesis(charged, forecast);
    }

    Hypothesis without(Hypothesis base, int fault) {
        BitSet charged = (BitSet) base.charged().clone();
        charged.clear(fault);
        return weigh(charged);
    }

    /** What a key's press adds to the quiet check, as the number of a reading. */
    int answer(Circuit circuit, int key) {
        return Forecast.answer(readings, circuit.quiet(), circuit, keys.get(key));
    }

    List<Fault> faults(Hypothesis hypothesis) {
        return charges.faults(hypothesis.charged());
    }

    private Forecast remembered(BitSet charged, Forecast forecast) {
        forecasts.put((BitSet) charged.clone(), forecast);
        return forecast;
    }

    private Hypothesis hypothesis(BitSet charged, Forecast forecast) {
        return new Hypothesis(charged, charges.logOdds(charged), forecast, Account.of(readings, tally, forecast));
    }
}
