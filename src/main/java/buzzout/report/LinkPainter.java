package buzzout.report;

import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.report.Shape.Anchor;
import buzzout.report.Shape.Words;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Links: bare legs between diodes, insulated wire stripped at its joints, jumpers as bows. */
final class LinkPainter {
    /** A leg, or the stripped part of a wire. */
    static final Stroke BARE = new Stroke(Tint.INK, 0.55);

    static final double WIRE = 1.1;

    /** Wire is bare so far from the middle of a joint. */
    private static final double STRIPPED = 2.2;

    /** How far a link may bend out of the straight, in millimetres, flattest first. */
    private static final List<Double> BOWS = List.of(0.0, 4.5, -4.5, 8.0, -8.0, 12.0, -12.0);

    private static final double CLEAR = 2.2;

    private final Plan plan;
    private final Positions positions;

    LinkPainter(Plan plan, Positions positions) {
        this.plan = plan;
        this.positions = positions;
    }

    List<Shape> links(Net net) {
        return net.links().stream().flatMap(link -> link(net, link)).toList();
    }

    private Stream<Shape> link(Net net, Link link) {
        Arc arc = arc(net, link);
        Stream<Shape> drawn = Stream.of(arc.drawn(BARE));
        if (link.jumper() || net.kind() != plan.diodes()) {
            Arc insulated = arc.without(STRIPPED);
            drawn = Stream.concat(drawn, WirePainter.wire(plan, net, WIRE, insulated::drawn));
        }
        return link.jumper() ? Stream.concat(drawn, Stream.of(jumper(arc))) : drawn;
    }

    /** The flattest that keeps clear of other joints and of diodes; a jumper bows at least a little, as it does on the board. */
    private Arc arc(Net net, Link link) {
        Joint first = net.joint(link.from());
        Joint second = net.joint(link.to());
        Point from = positions.joint(first);
        Point to = positions.joint(second);
        List<Point> others = plan.keys().stream()
                .flatMap(key -> Stream.concat(
                        Stream.of(NetKind.values())
                                .map(kind -> new Joint(key.index(), kind))
                                .filter(joint -> !joint.equals(first) && !joint.equals(second))
                                .map(positions::joint),
                        key.index() == first.key() || key.index() == second.key() ? Stream.empty() : diode(key)))
                .toList();
        List<Arc> arcs = BOWS.stream()
                .filter(bow -> bow > 0 || !link.jumper())
                .map(bow -> Arc.bowed(from, to, bow, positions.handed()))
                .toList();
        return arcs.stream()
                .filter(arc -> arc.clearance(others) > CLEAR)
                .findFirst()
                .orElseGet(() -> arcs.stream()
                        .max(Comparator.comparingDouble(arc -> arc.clearance(others)))
                        .orElseThrow());
    }

    private Stream<Point> diode(Key key) {
        Point pin = positions.diodePin(key);
        Point joint = positions.joint(new Joint(key.index(), plan.diodes()));
        return Stream.of(0.0, 0.3, 0.5, 0.7).map(part -> pin.towards(joint, part));
    }

    private Words jumper(Arc arc) {
        Point at = arc.isLevel() ? arc.belowStart(positions.handed()) : arc.beside();
        return new Words(at, 2.2, Anchor.MIDDLE, true, Tint.INK, "jumper");
    }
}
