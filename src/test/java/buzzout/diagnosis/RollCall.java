package buzzout.diagnosis;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Evidence as a faulty board would give it. */
public final class RollCall {
    private RollCall() {}

    /** Every key called once and pressed. */
    public static Evidence complete(Plan plan, Collection<? extends Fault> faults) {
        Circuit circuit = Circuit.of(plan, faults);
        Pairs quiet = circuit.quiet().low();
        List<Observation> observations = new ArrayList<>();
        observations.add(new Observation(new Hands.Off(), quiet));
        for (Key key : plan.keys()) {
            observations.add(new Observation(
                    new Hands.Meant(key.index()),
                    quiet.plus(circuit.pressed(key).low())));
        }
        return new Evidence(observations);
    }

    /** Every key pressed once in free play, and the person says so. */
    public static Evidence freePlay(Plan plan, Collection<? extends Fault> faults) {
        Circuit circuit = Circuit.of(plan, faults);
        Pairs quiet = circuit.quiet().low();
        List<Observation> observations = new ArrayList<>();
        observations.add(new Observation(new Hands.Off(), quiet));
        for (Key key : plan.keys()) {
            Pairs seen = circuit.pressed(key).low();
            if (!seen.minus(quiet).isEmpty()) {
                observations.add(new Observation(new Hands.SomeKey(), quiet.plus(seen)));
            }
        }
        observations.add(new Observation(new Hands.EveryKey(), quiet));
        return new Evidence(observations);
    }
}
