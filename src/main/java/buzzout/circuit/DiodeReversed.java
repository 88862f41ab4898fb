package buzzout.circuit;

import buzzout.plan.Plan;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** A key's diode sits the other way round than planned. */
public record DiodeReversed(int key) implements Fault {
    @Override
    public FaultKind kind() {
        return FaultKind.DIODE_REVERSED;
    }

    @Override
    public void change(Wiring wiring) {
        wiring.turnDiode(wiring.plan().keys().get(key));
    }

    @Override
    public List<Part> parts() {
        return List.of(new Part.DiodePart(key));
    }

    @Override
    public Set<Integer> nets(Plan plan) {
        return Set.of(plan.keys().get(key).row(), plan.keys().get(key).column());
    }

    @Override
    public OptionalInt onlyKey() {
        return OptionalInt.of(key);
    }

    @Override
    public String code(Plan plan) {
        return kind().code() + ":" + plan.keys().get(key).name();
    }

    @Override
    public String says(Plan plan) {
        return "the diode of " + plan.keys().get(key).spoken() + " sits the wrong way round";
    }

    @Override
    public String meter(Plan plan) {
        return "across the diode of " + plan.keys().get(key).spoken()
                + " in the diode range: a reading near 0.6 V with the red tip on the "
                + "stripe's end means that it sits the wrong way round";
    }

    @Override
    public String repair(Plan plan) {
        return "Unsolder the diode of " + plan.keys().get(key).spoken() + " at " + Part.numbers(plan, parts())
                + " and turn it, so that its stripe faces the "
                + plan.stripe().word() + ".";
    }
}
