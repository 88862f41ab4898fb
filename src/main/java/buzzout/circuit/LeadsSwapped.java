package buzzout.circuit;

import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Two leads are soldered to each other's controller pins; {@code net} is the lower index. */
public record LeadsSwapped(int net, int otherNet) implements Fault {
    static List<Fault> all(Plan plan, boolean neighbours) {
        List<Fault> faults = new ArrayList<>();
        for (int net = 0; net < plan.nets().size(); net++) {
            for (int other = net + 1; other < plan.nets().size(); other++) {
                if ((other == net + 1) == neighbours) {
                    faults.add(new LeadsSwapped(net, other));
                }
            }
        }
        return faults;
    }

    @Override
    public FaultKind kind() {
        return otherNet == net + 1 ? FaultKind.LEADS_SWAPPED : FaultKind.FAR_LEADS_SWAPPED;
    }

    @Override
    public void change(Wiring wiring) {
        wiring.swapLeads(net, otherNet);
    }

    @Override
    public List<Part> parts() {
        return List.of(new Part.LeadPart(net), new Part.LeadPart(otherNet));
    }

    @Override
    public Set<Integer> nets(Plan plan) {
        return Set.of(net, otherNet);
    }

    @Override
    public String code(Plan plan) {
        return kind().code() + ":" + plan.nets().get(net).name() + ":"
                + plan.nets().get(otherNet).name();
    }

    @Override
    public String says(Plan plan) {
        return "the leads of " + plan.nets().get(net).name() + " and "
                + plan.nets().get(otherNet).name() + " are swapped at the controller";
    }

    @Override
    public String meter(Plan plan) {
        Net one = plan.nets().get(net);
        Net other = plan.nets().get(otherNet);
        return "from controller pin " + one.pin() + " to " + other.name() + ": a beep means that the leads of "
                + one.name() + " and " + other.name() + " are swapped";
    }

    @Override
    public String repair(Plan plan) {
        Net one = plan.nets().get(net);
        Net other = plan.nets().get(otherNet);
        return "Move the lead of " + one.name() + " to pin " + one.pin() + " and the lead of " + other.name()
                + " to pin " + other.pin()
                + ", or accept the board as wired: `buzzout learn LOG --accept` writes that plan.";
    }
}
