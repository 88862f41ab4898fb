package buzzout.report;

import buzzout.plan.Joint;
import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import buzzout.report.Checklist.Section;
import buzzout.report.Checklist.Step;
import buzzout.report.Cut.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A plan's checklist: chains of diodes first, then the wires across them, then leads, then a last look. */
final class SolderingOrder {
    private final Plan plan;
    private final List<Cut> cuts;

    private SolderingOrder(Plan plan) {
        this.plan = plan;
        this.cuts = Cuts.of(plan);
    }

    static Checklist of(Plan plan) {
        SolderingOrder order = new SolderingOrder(plan);
        return new Checklist(List.of(order.parts(), order.chains(), order.wires(), order.leads(), order.lastLook()));
    }

    private Section parts() {
        List<String> boxes = new ArrayList<>();
        boxes.add(plan.keys().size() + " switches");
        boxes.add(plan.keys().size() + " diodes, such as the 1N4148");
        boxes.add("1 controller, " + plan.controller().name());
        for (Map.Entry<Optional<String>, Double> wire : Cuts.byColour(cuts).entrySet()) {
            boxes.add(metres(wire.getValue()) + " of "
                    + wire.getKey().map(colour -> colour + " wire").orElse("wire of any colour"));
        }
        String says = "Wire is reckoned from the drawing: each link from joint to joint, " + whole(Cuts.PER_JOINT)
                + " mm more for each joint, and for each lead its way along the board to the middle of the far edge and "
                + whole(Cuts.LEAD_SLACK) + " mm of slack. Have a tenth more at hand.";
        return new Section("Parts and wire", List.of(says), List.of(new Step("Parts", "", boxes)));
    }

    private Section chains() {
        String kind = plan.diodes().word();
        boolean stripeAtChain = plan.stripe() == plan.diodes();
        String stripe = stripeAtChain
                ? "the end without a stripe to the switch's pin, the stripe towards the " + kind
                : "the end with the stripe to the switch's pin, the other end towards the " + kind;
        return new Section(
                capital(kind) + "s of diodes",
                List.of(
                        "One diode for each switch: " + stripe + ". Look at each stripe before you solder.",
                        "Bend the leg at the " + kind
                                + " over to the next joint and solder it there. A box is a joint of" + " the " + kind
                                + "."),
                plan.nets(plan.diodes()).stream()
                        .map(net -> new Step(net.name(), "", chain(net)))
                        .toList());
    }

    private List<String> chain(Net net) {
        List<String> boxes = new ArrayList<>();
        for (int joint = 0; joint < net.joints().size(); joint++) {
            int to = joint;
            net.links().stream().filter(link -> link.to() == to).forEach(link -> before(net, link, boxes));
            boxes.add(named(net.joint(joint)));
        }
        return boxes;
    }

    /** What a link needs besides a leg to the next joint. */
    private void before(Net net, Link link, List<String> boxes) {
        List<Joint> ends = List.of(net.joint(link.from()), net.joint(link.to()));
        Optional<Cut> cut = cuts.stream()
                .filter(each -> each.net().equals(net)
                        && each.use() != Use.RUN
                        && each.joints().equals(ends))
                .findFirst();
        if (cut.isPresent()) {
            boxes.add((cut.get().use() == Use.JUMPER ? "jumper " : "wire, because a leg is too short, ") + numbers(ends)
                    + ", " + cut(cut.get()));
        } else if (link.from() != link.to() - 1) {
            boxes.add("branch: leg " + numbers(ends));
        }
    }

    private Section wires() {
        String kind = plan.diodes().other().word();
        List<Step> steps = new ArrayList<>();
        for (Net net : plan.nets(plan.diodes().other())) {
            List<Cut> own = cuts.stream()
                    .filter(cut -> cut.net().equals(net) && cut.use() != Use.LEAD)
                    .toList();
            for (Cut cut : own) {
                steps.add(new Step(
                        net.name(),
                        (cut.use() == Use.JUMPER ? "jumper: " : "") + "cut " + cut(cut) + ", bare at "
                                + cut.bareAt().stream()
                                        .map(SolderingOrder::whole)
                                        .collect(Collectors.joining(", ")) + " mm",
                        cut.joints().stream().map(this::named).toList()));
            }
            if (own.isEmpty()) {
                steps.add(new Step(net.name(), "a single key: only its lead", List.of()));
            }
        }
        return new Section(
                capital(kind) + "s of wire",
                List.of("Strip the wire where it meets a switch's free pin, a few millimetres at each place given: they"
                        + " are measured from the end at the first joint. Do not cut it there. A box is a joint of the "
                        + kind + "."),
                steps);
    }

    private Section leads() {
        return new Section(
                "Leads",
                List.of("From a joint with a square around it to the controller's pin, as the data sheet names it."),
                List.of(new Step(
                        "Leads",
                        "",
                        cuts.stream()
                                .filter(cut -> cut.use() == Use.LEAD)
                                .map(cut -> named(cut.joints().get(0)) + " to pin "
                                        + cut.net().pin() + ", " + cut(cut))
                                .toList())));
    }

    private Section lastLook() {
        return new Section(
                "Before you plug it in",
                List.of(
                        "Draw the fumes away, wear eye protection when you solder or clip legs, and wash your hands after"
                                + " leaded solder. The makers' instructions and local rules come first."),
                List.of(new Step(
                        "Last look",
                        "",
                        List.of(
                                "every stripe towards the " + plan.stripe().word(),
                                "no clipped leg, strand or blob between two joints",
                                "no leg touches a wire where it is bare, except at its own joint",
                                "every lead at the pin on its label",
                                "then: buzzout run with this plan"))));
    }

    private String named(Joint joint) {
        return joint.number(plan) + " " + plan.keys().get(joint.key()).name();
    }

    private String numbers(List<Joint> ends) {
        return ends.get(0).number(plan) + " to " + ends.get(1).number(plan);
    }

    private static String cut(Cut cut) {
        return whole(cut.length()) + " mm"
                + cut.net().colour().map(colour -> " " + colour).orElse("");
    }

    private static String whole(double millimetres) {
        return String.valueOf(Math.round(millimetres));
    }

    /** Rounded up to a decimetre's tenth. */
    private static String metres(double millimetres) {
        return String.format(Locale.ROOT, "%.2f m", Math.ceil(millimetres / 10) / 100);
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }
}
