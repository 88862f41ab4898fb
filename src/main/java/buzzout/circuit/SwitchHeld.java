package buzzout.circuit;

import buzzout.plan.Plan;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** A switch conducts without being pressed. */
public record SwitchHeld(int key) implements Fault {
    @Override
    public FaultKind kind() {
        return FaultKind.SWITCH_HELD;
    }

    @Override
    public void change(Wiring wiring) {
        wiring.holdSwitch(wiring.plan().keys().get(key));
    }

    @Override
    public List<Part> parts() {
        return List.of(new Part.SwitchPart(key));
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
        return "the switch of " + plan.keys().get(key).spoken() + " conducts without a press";
    }

    @Override
    public String meter(Plan plan) {
        return "across the switch of " + plan.keys().get(key).spoken() + ", unpressed: a beep means that it is held";
    }

    @Override
    public String repair(Plan plan) {
        return "Free the key " + plan.keys().get(key).spoken()
                + " if it is stuck, look for solder across its two switch pins, else replace the switch.";
    }
}
