package buzzout.report;

import buzzout.plan.Joint;
import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import buzzout.plan.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** All the wire that a board takes, from its geometry; the allowances are practice, and the drawing names them. */
final class Cuts {
    /** Wire that each joint takes up, in millimetres. */
    static final double PER_JOINT = 4;

    /** Slack of a lead, on top of its way along the board's lines to the middle of the far edge, in millimetres. */
    static final double LEAD_SLACK = 40;

    /** The longest link that the leg of a diode reaches across, in millimetres. */
    static final double LEG_REACH = 22;

    private final Plan plan;
    private final Positions positions;

    private Cuts(Plan plan) {
        this.plan = plan;
        this.positions = Positions.of(plan, Side.CAP);
    }

    /** Net by net: its runs, then its jumpers and reaches, then its lead. */
    static List<Cut> of(Plan plan) {
        Cuts cuts = new Cuts(plan);
        return plan.nets().stream().flatMap(cuts::cuts).toList();
    }

    /** Millimetres of each colour, most first; wire of no colour last. */
    static Map<Optional<String>, Double> byColour(List<Cut> cuts) {
        Map<Optional<String>, Double> sums = new LinkedHashMap<>();
        cuts.forEach(cut -> sums.merge(cut.net().colour(), cut.length(), Double::sum));
        Map<Optional<String>, Double> sorted = new LinkedHashMap<>();
        sums.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<Optional<String>, Double> sum) ->
                                sum.getKey().isEmpty())
                        .thenComparing(sum -> -sum.getValue()))
                .forEach(sum -> sorted.put(sum.getKey(), sum.getValue()));
        return sorted;
    }

    private Stream<Cut> cuts(Net net) {
        Stream<Cut> runs = net.kind() == plan.diodes() ? Stream.empty() : runs(net);
        Stream<Cut> links = net.links().stream().flatMap(link -> single(net, link));
        return Stream.of(runs, links, Stream.of(lead(net))).flatMap(each -> each);
    }

    /** One piece as far as each joint follows the one before; another for each branch and behind each jumper. */
    private Stream<Cut> runs(Net net) {
        List<List<Integer>> runs = new ArrayList<>();
        for (Link link : net.links()) {
            List<Integer> last = runs.isEmpty() ? List.of() : runs.get(runs.size() - 1);
            if (link.jumper()) {
                continue;
            }
            if (last.isEmpty() || last.get(last.size() - 1) != link.from()) {
                runs.add(new ArrayList<>(List.of(link.from())));
            }
            runs.get(runs.size() - 1).add(link.to());
        }
        return runs.stream().map(run -> run(net, run.stream().map(net::joint).toList()));
    }

    private Cut run(Net net, List<Joint> joints) {
        List<Double> bareAt = new ArrayList<>();
        double length = PER_JOINT / 2;
        for (int i = 0; i < joints.size(); i++) {
            if (i > 0) {
                length += positions.joint(joints.get(i - 1)).to(positions.joint(joints.get(i))) + PER_JOINT;
            }
            bareAt.add(length);
        }
        return new Cut(net, Cut.Use.RUN, joints, bareAt, length + PER_JOINT / 2);
    }

    private Stream<Cut> single(Net net, Link link) {
        double distance = positions.length(net, link);
        boolean reach = net.kind() == plan.diodes() && distance > LEG_REACH;
        if (!link.jumper() && !reach) {
            return Stream.empty();
        }
        double length = distance + 2 * PER_JOINT;
        return Stream.of(new Cut(
                net,
                link.jumper() ? Cut.Use.JUMPER : Cut.Use.REACH,
                List.of(net.joint(link.from()), net.joint(link.to())),
                List.of(PER_JOINT / 2, length - PER_JOINT / 2),
                length));
    }

    private Cut lead(Net net) {
        Joint joint = net.joint(net.leadJoint());
        Point at = positions.joint(joint);
        double length = Math.abs(at.x() - positions.width() / 2) + at.y() + LEAD_SLACK;
        return new Cut(net, Cut.Use.LEAD, List.of(joint), List.of(PER_JOINT / 2, length - PER_JOINT / 2), length);
    }
}
