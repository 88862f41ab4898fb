package buzzout.circuit;

import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** What would be open for good with another fault conducts at one moment and not at the next, as a cold joint does. */
public record ComesAndGoes(Fault open) implements Fault {
    static List<Fault> all(Plan plan) {
        List<Fault> faults = new ArrayList<>();
        for (FaultKind kind : FaultKind.OPEN) {
            for (Fault open : kind.all(plan)) {
                faults.add(new ComesAndGoes(open));
            }
        }
        return faults;
    }

    @Override
    public FaultKind kind() {
        return FaultKind.COMES_AND_GOES;
    }

    @Override
    public void change(Wiring wiring) {
        wiring.loosen(open);
    }

    @Override
    public List<Part> parts() {
        return open.parts();
    }

    @Override
    public Set<Integer> nets(Plan plan) {
        return open.nets(plan);
    }

    @Override
    public OptionalInt onlyKey() {
        return open.onlyKey();
    }

    @Override
    public String code(Plan plan) {
        return kind().code() + ":" + open.code(plan);
    }

    @Override
    public String says(Plan plan) {
        return "a joint comes and goes: at times " + open.says(plan);
    }

    @Override
    public String meter(Plan plan) {
        return open.meter(plan) + "; move the wire and the joint meanwhile, for the reading comes and goes";
    }

    @Override
    public String repair(Plan plan) {
        return "Look for a grey or cracked joint and a wire that moves. " + open.repair(plan);
    }
}
