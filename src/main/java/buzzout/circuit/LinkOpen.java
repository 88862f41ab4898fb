package buzzout.circuit;

import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import buzzout.plan.SolderSide;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A link of a row or column, or a jumper, does not conduct. */
public record LinkOpen(int net, int link, boolean jumper) implements Fault {
    static List<Fault> all(Plan plan, boolean jumpers) {
        List<Fault> faults = new ArrayList<>();
        for (int net = 0; net < plan.nets().size(); net++) {
            List<Link> links = plan.nets().get(net).links();
            for (int link = 0; link < links.size(); link++) {
                if (links.get(link).jumper() == jumpers) {
                    faults.add(new LinkOpen(net, link, jumpers));
                }
            }
        }
        return faults;
    }

    @Override
    public FaultKind kind() {
        return jumper ? FaultKind.JUMPER_OFF : FaultKind.LINK_OPEN;
    }

    @Override
    public void change(Wiring wiring) {
        wiring.openLink(net, link);
    }

    @Override
    public List<Part> parts() {
        return List.of(new Part.LinkPart(net, link));
    }

    @Override
    public Set<Integer> nets(Plan plan) {
        return Set.of(net);
    }

    @Override
    public String code(Plan plan) {
        Net on = plan.nets().get(net);
        return kind().code() + ":" + on.name() + ":"
                + SolderSide.keyAt(plan, on, planned(plan).from()).name() + ":"
                + SolderSide.keyAt(plan, on, planned(plan).to()).name();
    }

    @Override
    public String says(Plan plan) {
        Net on = plan.nets().get(net);
        return (jumper ? "the jumper of " + on.name() + " is off between " : on.name() + " is open between ")
                + SolderSide.between(plan, on, planned(plan));
    }

    @Override
    public String meter(Plan plan) {
        Net on = plan.nets().get(net);
        return "from joint to joint of " + on.name() + " between " + SolderSide.between(plan, on, planned(plan))
                + ": no beep means that it is open there";
    }

    @Override
    public String repair(Plan plan) {
        Net on = plan.nets().get(net);
        return "Reheat both joints of " + on.name() + " between " + SolderSide.between(plan, on, planned(plan)) + " ("
                + SolderSide.numbered(plan, on, planned(plan).from()) + ", and "
                + SolderSide.numbered(plan, on, planned(plan).to()) + "; solder side), or replace the "
                + (jumper ? "jumper" : "link") + ".";
    }

    private Link planned(Plan plan) {
        return plan.nets().get(net).links().get(link);
    }
}
