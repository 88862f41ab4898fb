package buzzout.diagnosis;

import buzzout.circuit.FaultKind;
import buzzout.plan.Plan;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * How probable each single fault is before anything was seen.
 *
 * <p>All of it is judgement: no credible rates are published for hand-made joints. The order follows common practice: a
 * missed or cold joint, then a wire on the wrong place, then a reversed diode or a bridge, then the rest.
 *
 * @param of the probability of one named fault of each kind, such as one certain link being open
 */
public record Priors(Map<FaultKind, Double> of) {
    public Priors {
        of = Map.copyOf(of);
    }

    public static Priors judged() {
        Map<FaultKind, Double> table = new EnumMap<>(FaultKind.class);
        table.put(FaultKind.KEY_OPEN, 0.006); // four joints, a switch and a diode
        table.put(FaultKind.JUMPER_OFF, 0.006);
        table.put(FaultKind.LINK_OPEN, 0.004); // two joints
        table.put(FaultKind.LEAD_OFF, 0.004); // two joints
        table.put(FaultKind.DIODE_REVERSED, 0.002);
        table.put(FaultKind.LEADS_SWAPPED, 0.001);
        table.put(FaultKind.MIRROR_IMAGE, 0.001);
        table.put(FaultKind.STRIPES_TURNED, 0.001);
        table.put(FaultKind.WRONG_NET, 0.0005);
        table.put(FaultKind.DIODE_BYPASSED, 0.0005);
        table.put(FaultKind.SWITCH_HELD, 0.0005);
        table.put(FaultKind.BRIDGE, 0.0004); // one certain pair of joints; a column has several
        table.put(FaultKind.CROSSING_BRIDGED, 0.0002);
        table.put(FaultKind.PIN_LOW, 0.0002);
        table.put(FaultKind.PIN_DRAGGED, 0.0002);
        table.put(FaultKind.COMES_AND_GOES, 0.0003);
        table.put(FaultKind.FAR_LEADS_SWAPPED, 0.00005);
        return new Priors(table);
    }

    /** What is judged, except where the plan says otherwise. */
    public static Priors of(Plan plan) {
        Map<FaultKind, Double> table = new EnumMap<>(judged().of());
        for (FaultKind kind : FaultKind.values()) {
            Optional.ofNullable(plan.priors().get(kind.code())).ifPresent(prior -> table.put(kind, prior));
        }
        return new Priors(table);
    }

    /** The logarithm of the odds of one fault of a kind. */
    public double logOdds(FaultKind kind) {
        double probability = Objects.requireNonNull(of.get(kind), () -> "no prior for " + kind);
        return Math.log(probability / (1 - probability));
    }
}
