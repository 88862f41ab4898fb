package buzzout.report;

import buzzout.plan.Plan;
import buzzout.report.Lead.Edge;
import buzzout.report.Shape.Anchor;
import buzzout.report.Shape.Box;
import buzzout.report.Shape.Line;
import buzzout.report.Shape.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Leads, the tags with their pins, and the bundle to the controller, which is drawn at the far edge. */
final class LeadPainter {
    private static final double BUNDLE_AWAY = 19.5;
    private static final double CONTROLLER_WIDTH = 34;
    private static final double CONTROLLER_HEIGHT = 7;
    private static final double LEAD_WIRE = 0.7;

    private final Plan plan;
    private final Positions positions;
    private final List<Lead> leads;

    LeadPainter(Plan plan, Positions positions, List<Lead> leads) {
        this.plan = plan;
        this.positions = positions;
        this.leads = leads;
    }

    List<Shape> ways() {
        return leads.stream()
                .flatMap(lead -> {
                    List<Point> way = lead.way().stream().map(positions::seen).toList();
                    return WirePainter.wire(plan, lead.net(), LEAD_WIRE, stroke -> new Line(way, stroke));
                })
                .toList();
    }

    List<Shape> tags() {
        return leads.stream().flatMap(this::tag).toList();
    }

    private Stream<Shape> tag(Lead lead) {
        Point middle = positions.seen(lead.tag());
        String pin = "pin " + lead.net().pin();
        String name = lead.net().name();
        Stream<Shape> box = Stream.of(
                Box.around(middle, Leads.TAG_WIDTH, Leads.TAG_HEIGHT, Tint.PAPER, new Stroke(Tint.INK, 0.35)),
                words(middle.moved(0, -1.7), name, 3.2, true),
                words(middle.moved(0, 1.5), pin, 2.8, true));
        return Stream.concat(
                box, lead.net().colour().stream().map(colour -> words(middle.moved(0, 4.4), colour, 2.3, false)));
    }

    private static Words words(Point at, String text, double size, boolean bold) {
        return new Words(
                at, TextWidth.fitting(text, bold, size, Leads.TAG_WIDTH - 1.2), Anchor.MIDDLE, bold, Tint.INK, text);
    }

    /** From all tags round the board to the controller. */
    List<Shape> harness() {
        double width = positions.width();
        double height = positions.height();
        double topLeft = span(Edge.TOP).map(Point::x).min(Double::compare).orElse(width / 2);
        double topRight = span(Edge.TOP).map(Point::x).max(Double::compare).orElse(width / 2);
        List<Shape> shapes = new ArrayList<>();
        topLeft = Math.min(topLeft, width / 2);
        topRight = Math.max(topRight, width / 2);
        for (Edge edge : List.of(Edge.LEFT, Edge.RIGHT)) {
            double x = edge == Edge.LEFT ? -BUNDLE_AWAY : width + BUNDLE_AWAY;
            double low = span(edge).map(Point::y).max(Double::compare).orElse(-1.0);
            boolean bottomHere = edge == Edge.LEFT && uses(Edge.BOTTOM);
            if (uses(edge) || bottomHere) {
                double end = bottomHere ? height + BUNDLE_AWAY : low;
                shapes.add(bundle(new Point(x, -BUNDLE_AWAY), new Point(x, end)));
                topLeft = Math.min(topLeft, x);
                topRight = Math.max(topRight, x);
            }
        }
        if (uses(Edge.BOTTOM)) {
            double right = span(Edge.BOTTOM).map(Point::x).max(Double::compare).orElse(0.0);
            double y = height + BUNDLE_AWAY;
            shapes.add(bundle(new Point(-BUNDLE_AWAY, y), new Point(right, y)));
        }
        shapes.add(bundle(new Point(topLeft, -BUNDLE_AWAY), new Point(topRight, -BUNDLE_AWAY)));
        leads.forEach(lead -> shapes.add(bundle(lead.tag(), toBundle(lead))));
        Point controller = new Point(width / 2, -BUNDLE_AWAY - CONTROLLER_HEIGHT / 2 + 1);
        shapes.add(Box.around(
                positions.seen(controller),
                CONTROLLER_WIDTH,
                CONTROLLER_HEIGHT,
                Tint.PAPER,
                new Stroke(Tint.INK, 0.5)));
        shapes.add(new Words(
                positions.seen(controller).moved(0, 1.2),
                3.4,
                Anchor.MIDDLE,
                true,
                Tint.INK,
                plan.controller().name()));
        return shapes;
    }

    private Point toBundle(Lead lead) {
        Point tag = lead.tag();
        return switch (lead.edge()) {
            case LEFT -> new Point(-BUNDLE_AWAY, tag.y());
            case RIGHT -> new Point(positions.width() + BUNDLE_AWAY, tag.y());
            case TOP -> new Point(tag.x(), -BUNDLE_AWAY);
            case BOTTOM -> new Point(tag.x(), positions.height() + BUNDLE_AWAY);
        };
    }

    private Line bundle(Point from, Point to) {
        return Line.between(positions.seen(from), positions.seen(to), new Stroke(new Tint(0xD5D9DD), 1.6));
    }

    private Stream<Point> span(Edge edge) {
        return leads.stream().filter(lead -> lead.edge() == edge).map(Lead::tag);
    }

    private boolean uses(Edge edge) {
        return span(edge).findAny().isPresent();
    }

    /** What stands around the keys, in millimetres, as this side shows it. */
    record Margins(double left, double right, double top, double bottom) {
        Drawing around(List<Shape> shapes, Positions positions, double more) {
            return new Drawing(
                    left + positions.width() + right + 2 * more,
                    top + positions.height() + bottom + 2 * more,
                    shapes.stream()
                            .map(shape -> shape.placed(1, left + more, top + more))
                            .toList());
        }
    }

    Margins margins() {
        double out = BUNDLE_AWAY + 1;
        double left = uses(Edge.LEFT) || uses(Edge.BOTTOM) ? out : overhang(-1);
        double right = uses(Edge.RIGHT) ? out : overhang(1);
        boolean mirrored = positions.handed() < 0;
        return new Margins(
                mirrored ? right : left,
                mirrored ? left : right,
                BUNDLE_AWAY + CONTROLLER_HEIGHT,
                uses(Edge.BOTTOM) ? out : below());
    }

    /** How far the tags at the side edges reach below the keys. */
    private double below() {
        return leads.stream()
                .filter(lead -> !lead.edge().isUpright())
                .mapToDouble(lead -> lead.tag().y() + Leads.TAG_HEIGHT / 2 - positions.height())
                .max()
                .stream()
                .map(over -> Math.max(0, over))
                .findFirst()
                .orElse(0);
    }

    /** How far the tags at the far and near edges reach over the side edges, and the controller of a narrow board. */
    private double overhang(int sign) {
        double middle = positions.width() / 2;
        double most = leads.stream()
                .filter(lead -> lead.edge().isUpright())
                .mapToDouble(lead -> sign * (lead.tag().x() - middle) + Leads.TAG_WIDTH / 2)
                .max()
                .orElse(0);
        return Math.max(0, Math.max(most, CONTROLLER_WIDTH / 2) - middle);
    }
}
