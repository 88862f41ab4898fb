package buzzout.circuit;

import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.stream.Stream;

/** The keys to look at for a fault. */
public final class Concerned {
    private Concerned() {}

    /** Indices into the plan's keys, in their order; none for a fault of the whole board. */
    public static Stream<Integer> keys(Plan plan, Fault fault) {
        return fault.parts().stream()
                .flatMap(part -> keys(plan, part))
                .distinct()
                .sorted();
    }

    private static Stream<Integer> keys(Plan plan, Part part) {
        if (part instanceof Part.LinkPart at) {
            Net net = plan.nets().get(at.net());
            Link link = net.links().get(at.link());
            return Stream.of(net.joints().get(link.from()), net.joints().get(link.to()));
        } else if (part instanceof Part.LeadPart at) {
            return atLead(plan.nets().get(at.net()));
        } else if (part instanceof Part.PinPart at) {
            return atLead(plan.nets().get(at.net()));
        } else if (part instanceof Part.SwitchPart at) {
            return Stream.of(at.key());
        } else if (part instanceof Part.DiodePart at) {
            return Stream.of(at.key());
        } else if (part instanceof Part.EndPart at) {
            return Stream.of(at.key());
        } else if (part instanceof Part.GapPart at) {
            return Stream.of(at.joint(), at.otherJoint());
        }
        return Stream.empty();
    }

    private static Stream<Integer> atLead(Net net) {
        return Stream.of(net.joints().get(net.leadJoint()));
    }
}
