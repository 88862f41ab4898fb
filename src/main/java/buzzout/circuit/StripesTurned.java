package buzzout.circuit;

import buzzout.plan.Plan;
import java.util.List;
import java.util.Set;

/** Every diode sits the other way round than planned. */
public record StripesTurned() implements Fault {
    static List<Fault> all() {
        return List.of(new StripesTurned());
    }

    @Override
    public FaultKind kind() {
        return FaultKind.STRIPES_TURNED;
    }

    @Override
    public void change(Wiring wiring) {
        wiring.turnAllDiodes();
    }

    @Override
    public List<Part> parts() {
        return List.of(Part.Whole.STRIPES);
    }

    @Override
    public Set<Integer> nets(Plan plan) {
        return plan.netIndices();
    }

    @Override
    public String code(Plan plan) {
        return kind().code();
    }

    @Override
    public String says(Plan plan) {
        return "every diode sits the other way round than planned";
    }

    @Override
    public String meter(Plan plan) {
        return "across any diode in the diode range: a reading near 0.6 V with the red tip on the stripe's end means "
                + "that the diodes sit the other way round";
    }

    @Override
    public String repair(Plan plan) {
        return "Nothing needs the iron: set stripe = \"" + plan.stripe().other().word()
                + "\" in the plan, as `buzzout learn LOG --accept` does, and tell the firmware the same.";
    }
}
