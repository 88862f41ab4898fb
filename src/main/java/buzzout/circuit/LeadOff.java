package buzzout.circuit;

import buzzout.plan.Net;
import buzzout.plan.Plan;
import buzzout.plan.SolderSide;
import java.util.List;
import java.util.Set;

/** The lead from a net to its controller pin does not conduct. */
public record LeadOff(int net) implements Fault {
    @Override
    public FaultKind kind() {
        return FaultKind.LEAD_OFF;
    }

    @Override
    public void change(Wiring wiring) {
        wiring.takeLeadOff(net);
    }

    @Override
    public List<Part> parts() {
        return List.of(new Part.LeadPart(net));
    }

    @Override
    public Set<Integer> nets(Plan plan) {
        return Set.of(net);
    }

    @Override
    public String code(Plan plan) {
        return kind().code() + ":" + plan.nets().get(net).name();
    }

    @Override
    public String says(Plan plan) {
        Net on = plan.nets().get(net);
        return "the lead of " + on.name() + " to pin " + on.pin() + " is off";
    }

    @Override
    public String meter(Plan plan) {
        Net on = plan.nets().get(net);
        return "from controller pin " + on.pin() + " to the "
                + SolderSide.keyAt(plan, on, on.leadJoint()).spoken() + " joint of " + on.name()
                + ": no beep means that the lead is off";
    }

    @Override
    public String repair(Plan plan) {
        Net on = plan.nets().get(net);
        return "Reheat the lead of " + on.name() + " at the "
                + SolderSide.keyAt(plan, on, on.leadJoint()).spoken()
                + " joint (" + SolderSide.numbered(plan, on, on.leadJoint()) + ", solder side) and at controller pin "
                + on.pin() + ".";
    }
}
