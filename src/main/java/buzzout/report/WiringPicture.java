package buzzout.report;

import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.plan.Side;
import buzzout.report.Shape.Anchor;
import buzzout.report.Shape.Box;
import buzzout.report.Shape.Disc;
import buzzout.report.Shape.Line;
import buzzout.report.Shape.Ring;
import buzzout.report.Shape.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A board's wiring seen from one side, in millimetres at the board's own size: keys, diodes with their stripes, rows and
 * columns with their joints' numbers, jumpers, and the leads with their pins.
 *
 * <pre>{@code
 * Marks marks = new Marks(
 *         Map.of(key.index(), new Marks.KeyMark("○", true)),
 *         Map.of(new Joint(key.index(), NetKind.ROW), "1"));
 * String svg = SvgDrawing.element(WiringPicture.of(plan, Side.SOLDER, marks), "Quayside 46, solder side");
 * }</pre>
 */
public final class WiringPicture {
    private static final double MARGIN = 1.5;
    private static final double NAME_SIZE = 3.7;
    private static final double NUMBER_SIZE = 2.2;
    private static final double JOINT_RADIUS = 0.85;

    private static final Stroke OUTLINE = new Stroke(Tint.FAINT, 0.25);
    private static final Stroke HEAVY = new Stroke(Tint.INK, 0.9);
    private static final Stroke EDGE = new Stroke(Tint.INK, 0.3);

    private final Plan plan;
    private final Positions positions;
    private final Marks marks;
    private final List<Shape> shapes = new ArrayList<>();

    private WiringPicture(Plan plan, Side side, Marks marks) {
        this.plan = plan;
        this.positions = Positions.of(plan, side);
        this.marks = marks;
    }

    public static Drawing of(Plan plan, Side side, Marks marks) {
        WiringPicture picture = new WiringPicture(plan, side, marks);
        plan.keys().forEach(picture::key);
        List<Lead> leads = Leads.of(plan);
        LeadPainter ends = new LeadPainter(plan, picture.positions, leads);
        picture.shapes.addAll(ends.harness());
        picture.shapes.addAll(ends.ways());
        LinkPainter links = new LinkPainter(plan, picture.positions);
        plan.nets().forEach(net -> picture.shapes.addAll(links.links(net)));
        plan.keys().forEach(picture::diode);
        plan.nets().forEach(picture::joints);
        plan.keys().forEach(picture::labels);
        picture.shapes.addAll(ends.tags());
        picture.marks();
        return ends.margins().around(picture.shapes, picture.positions, MARGIN);
    }

    private void key(Key key) {
        boolean stands = marks.keys().containsKey(key.index())
                && marks.keys().get(key.index()).stands();
        double gap = 1.2;
        shapes.add(Box.around(
                positions.middle(key),
                positions.wide(key) - gap,
                Positions.PITCH - gap,
                Tint.PAPER,
                stands ? HEAVY : OUTLINE));
    }

    /** Between the switch's pin and the joint of the chain that it belongs to. */
    private void diode(Key key) {
        Point pin = positions.diodePin(key);
        Point joint = positions.joint(new Joint(key.index(), plan.diodes()));
        shapes.add(Line.between(pin, joint, LinkPainter.BARE));
        shapes.addAll(DiodeSymbol.between(pin, joint, plan.stripe() == plan.diodes()));
        shapes.add(new Disc(pin, JOINT_RADIUS, Tint.PAPER, new Stroke(Tint.INK, 0.4)));
    }

    private void joints(Net net) {
        for (int joint = 0; joint < net.joints().size(); joint++) {
            Point at = positions.joint(net.joint(joint));
            if (joint == net.leadJoint()) {
                shapes.add(Box.around(at, 3.4, 3.4, Tint.PAPER, new Stroke(Tint.INK, 0.5)));
            }
            shapes.add(new Disc(at, JOINT_RADIUS, Tint.INK, EDGE));
        }
    }

    private void labels(Key key) {
        Point middle = positions.middle(key);
        double room = Positions.PITCH - 10.3;
        shapes.add(new Words(
                middle.moved(0, 1.4),
                TextWidth.fitting(key.name(), true, NAME_SIZE, room),
                Anchor.MIDDLE,
                true,
                Tint.INK,
                key.name()));
        for (NetKind kind : NetKind.values()) {
            number(new Joint(key.index(), kind));
        }
        if (marks.keys().containsKey(key.index())) {
            Point corner = middle.moved(positions.handed() * 4, 4.6);
            String mark = marks.keys().get(key.index()).mark();
            shapes.add(new Words(corner, NAME_SIZE, Anchor.MIDDLE, true, Tint.INK, mark));
        }
    }

    /** Inside the key, beside its joint: a row's to the middle and above, a column's to the middle and beside. */
    private void number(Joint joint) {
        boolean row = joint.kind() == NetKind.ROW;
        int inwards = positions.handed() * (row ? 1 : -1);
        double down = row ? -1 : plan.diodes() == NetKind.ROW ? 0.8 : 2.9;
        shapes.add(new Words(
                positions.joint(joint).moved(inwards * 2.7, down),
                NUMBER_SIZE,
                inwards > 0 ? Anchor.START : Anchor.END,
                false,
                Tint.INK,
                joint.number(plan)));
    }

    private void marks() {
        marks.joints().keySet().stream()
                .sorted(java.util.Comparator.comparing(joint -> joint.number(plan)))
                .flatMap(joint -> ringed(positions.joint(joint), marks.joints().getOrDefault(joint, "")))
                .forEach(shapes::add);
    }

    private static Stream<Shape> ringed(Point joint, String label) {
        Point badge = joint.moved(2.9, -2.9);
        return Stream.of(
                new Ring(joint, 2.3, new Stroke(Tint.PAPER, 1.2)),
                new Ring(joint, 2.3, HEAVY),
                new Disc(badge, 1.9, Tint.INK, new Stroke(Tint.PAPER, 0.3)),
                new Words(
                        badge.moved(0, 0.95),
                        TextWidth.fitting(label, true, 2.8, 3),
                        Anchor.MIDDLE,
                        true,
                        Tint.PAPER,
                        label));
    }
}
