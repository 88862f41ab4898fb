package buzzout.circuit;

import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** A key's own branch is open: its switch, its diode, or a joint of theirs. */
public record KeyOpen(int key) implements Fault {
    @Override
    public FaultKind kind() {
        return FaultKind.KEY_OPEN;
    }

    @Override
    public void change(Wiring wiring) {
        wiring.openKey(wiring.plan().keys().get(key));
    }

    @Override
    public List<Part> parts() {
        return List.of(
                new Part.SwitchPart(key),
                new Part.DiodePart(key),
                new Part.EndPart(key, NetKind.ROW),
                new Part.EndPart(key, NetKind.COLUMN));
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
        return plan.keys().get(key).spoken() + " never conducts: its switch, its diode or one of their joints is open";
    }

    @Override
    public String meter(Plan plan) {
        return "from row to column of " + plan.keys().get(key).spoken()
                + " with the key held, in the diode range: no reading either way round "
                + "means that its switch, its diode or a joint of theirs is open";
    }

    @Override
    public String repair(Plan plan) {
        return "Reheat the switch pins and both ends of the diode of "
                + plan.keys().get(key).spoken() + ", joints "
                + Part.numbers(plan, parts()) + "; if it stays silent, replace the diode, then the switch.";
    }
}
