package buzzout.report;

import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.plan.Side;
import buzzout.report.Lead.Edge;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Finds every lead a way to the edge: straight where nothing lies on it, else along the gap between two keys. */
final class Leads {
    /** What a tag takes along its edge. */
    static final double TAG_WIDTH = 13.5;

    static final double TAG_HEIGHT = 11;

    /** From the board's edge to the middle of a tag. */
    private static final double TAG_AWAY = 11;

    /** How far tags may reach over the board's corners. */
    private static final double OVER = 5;

    private static final double CLEAR = 1.4;
    private static final double LANE = 1.2;

    private final Plan plan;
    private final Positions caps;
    private final Map<Integer, Integer> lanes = new HashMap<>();
    private final Map<Edge, List<Lead>> atEdge = new EnumMap<>(Edge.class);

    private Leads(Plan plan) {
        this.plan = plan;
        this.caps = Positions.of(plan, Side.CAP);
    }

    /** One for each net, in the plan's order of nets. */
    static List<Lead> of(Plan plan) {
        Leads leads = new Leads(plan);
        plan.nets().stream()
                .map(leads::way)
                .forEach(lead -> leads.atEdge
                        .computeIfAbsent(lead.edge(), edge -> new ArrayList<>())
                        .add(lead));
        return leads.atEdge.entrySet().stream()
                .flatMap(entry -> leads.apart(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparing(lead -> plan.indexOf(lead.net())))
                .toList();
    }

    private Lead way(Net net) {
        Joint joint = net.joint(net.leadJoint());
        Point from = caps.joint(joint);
        boolean row = net.kind() == NetKind.ROW;
        Edge near = row
                ? (from.x() < caps.width() / 2 ? Edge.LEFT : Edge.RIGHT)
                : (from.y() < caps.height() / 2 + Positions.PITCH ? Edge.TOP : Edge.BOTTOM);
        Edge far = row ? (near == Edge.LEFT ? Edge.RIGHT : Edge.LEFT) : near == Edge.TOP ? Edge.BOTTOM : Edge.TOP;
        for (Edge edge : List.of(near, far)) {
            if (isFree(from, end(from, edge))) {
                return lead(net, edge, List.of(from, end(from, edge)));
            }
        }
        Point middle = caps.middle(plan.keys().get(joint.key()));
        double gap = Positions.PITCH / 2 - 0.7;
        double step =
                LANE * lanes.merge((int) Math.round((row ? middle.y() : -middle.x() - 1) * 10), 1, Integer::sum) - LANE;
        Point corner =
                row ? new Point(from.x(), middle.y() + gap - step) : new Point(middle.x() + gap - step, from.y());
        return lead(net, near, List.of(from, corner, end(corner, near)));
    }

    private static Lead lead(Net net, Edge edge, List<Point> way) {
        return new Lead(net, edge, way, way.get(way.size() - 1));
    }

    private Point end(Point from, Edge edge) {
        return switch (edge) {
            case LEFT -> new Point(0, from.y());
            case RIGHT -> new Point(caps.width(), from.y());
            case TOP -> new Point(from.x(), 0);
            case BOTTOM -> new Point(from.x(), caps.height());
        };
    }

    private boolean isFree(Point from, Point to) {
        return plan.keys().stream()
                .flatMap(this::points)
                .allMatch(point -> point.equals(from) || point.fromLine(from, to) > CLEAR);
    }

    private Stream<Point> points(Key key) {
        return Stream.of(
                caps.diodePin(key),
                caps.joint(new Joint(key.index(), NetKind.ROW)),
                caps.joint(new Joint(key.index(), NetKind.COLUMN)));
    }

    /** Moves the tags of an edge along it until none covers another. */
    private Stream<Lead> apart(Edge edge, List<Lead> leads) {
        double room = edge.isUpright() ? caps.width() : caps.height();
        double size = edge.isUpright() ? TAG_WIDTH + 1 : TAG_HEIGHT + 1;
        List<Lead> ordered = leads.stream()
                .sorted(Comparator.comparingDouble(lead -> along(edge, lead.tag())))
                .toList();
        double[] at =
                ordered.stream().mapToDouble(lead -> along(edge, lead.tag())).toArray();
        for (int i = 1; i < at.length; i++) {
            at[i] = Math.max(at[i], at[i - 1] + size);
        }
        double most = Math.max(room + OVER - size / 2, at.length * size - size / 2);
        for (int i = at.length - 1; i >= 0; i--) {
            at[i] = Math.min(at[i], most);
            most = at[i] - size;
        }
        return java.util.stream.IntStream.range(0, at.length).mapToObj(i -> tagged(ordered.get(i), at[i]));
    }

    private Lead tagged(Lead lead, double along) {
        List<Point> way = new ArrayList<>(lead.way());
        Point tag = switch (lead.edge()) {
            case LEFT -> new Point(-TAG_AWAY, along);
            case RIGHT -> new Point(caps.width() + TAG_AWAY, along);
            case TOP -> new Point(along, -TAG_AWAY);
            case BOTTOM -> new Point(along, caps.height() + TAG_AWAY);
        };
        way.add(tag);
        return new Lead(lead.net(), lead.edge(), way, tag);
    }

    private static double along(Edge edge, Point point) {
        return edge.isUpright() ? point.x() : point.y();
    }
}
