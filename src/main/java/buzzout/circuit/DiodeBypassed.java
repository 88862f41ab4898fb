package buzzout.circuit;

import buzzout.plan.Plan;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** A key's diode conducts both ways: bridged with solder, or broken down. */
public record DiodeBypassed(int key) implements Fault {
    @Override
    public FaultKind kind() {
        return FaultKind.DIODE_BYPASSED;
    }

    @Override
    public void change(Wiring wiring) {
        wiring.bypassDiode(wiring.plan().keys().get(key));
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
        return "the diode of " + plan.keys().get(key).spoken() + " is bypassed, so that current flows both ways";
    }

    @Override
    public String meter(Plan plan) {
        return "across the diode of " + plan.keys().get(key).spoken()
                + " in the diode range: near 0 V both ways round means that it is bypassed";
    }

    @Override
    public String repair(Plan plan) {
        return "Look for solder or a leg across the diode of "
                + plan.keys().get(key).spoken() + " at " + Part.numbers(plan, parts())
                + "; if there is none, replace the diode.";
    }
}
