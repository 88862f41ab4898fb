package buzzout.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.ExamplePlan;
import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.plan.PlanReader;
import buzzout.plan.Side;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Everything of the plan is on both sides once, and where it belongs. */
class WiringPictureTest {
    private static final Plan QUAYSIDE = ExamplePlan.quayside();

    /** Twice two keys; rows and columns carry diodes as asked. */
    static Plan small(String stripe, String diodes) {
        return PlanReader.read("""
                name = "Small"
                controller = "ATmega32U4"
                stripe = "%s"
                diodes = "%s"
                [rows]
                R1 = { pin = "D0", keys = "A B" }
                R2 = { pin = "D1", keys = "C D", jumpers = ["C D"] }
                [columns]
                C1 = { pin = "D2", keys = "A C", colour = "red" }
                C2 = { pin = "D3", keys = "B D", lead = "D" }
                """.formatted(stripe, diodes), "small.toml")
                .plan()
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource
    void every_name_joint_number_pin_and_jumper_is_written_once(Side side) {
        Map<String, Long> words = words(WiringPicture.of(QUAYSIDE, side, Marks.NONE));
        for (Key key : QUAYSIDE.keys()) {
            assertEquals(1L, words.get(key.name()), key.name());
            for (NetKind kind : NetKind.values()) {
                String number = new Joint(key.index(), kind).number(QUAYSIDE);
                assertEquals(1L, words.get(number), number);
            }
        }
        for (Net net : QUAYSIDE.nets()) {
            assertEquals(1L, words.get(net.name()), net.name());
            assertEquals(1L, words.get("pin " + net.pin()), net.pin());
            net.colour().ifPresent(colour -> assertEquals(1L, words.get(colour), colour));
        }
        assertEquals(4L, words.get("jumper"));
        assertEquals(1L, words.get("ATmega32U4"));
    }

    @ParameterizedTest
    @EnumSource
    void every_link_is_one_bare_line_from_joint_to_joint_and_every_key_has_one_diode(Side side) {
        Positions positions = Positions.of(QUAYSIDE, side);
        for (Net net : QUAYSIDE.nets()) {
            List<Shape> shapes = new LinkPainter(QUAYSIDE, positions).links(net);
            List<List<Point>> bare = shapes.stream()
                    .map(WiringPictureTest::bareEnds)
                    .flatMap(List::stream)
                    .toList();
            List<List<Point>> planned = net.links().stream()
                    .map(link ->
                            List.of(positions.joint(net.joint(link.from())), positions.joint(net.joint(link.to()))))
                    .toList();
            assertEquals(planned, bare, net.name());
        }
        long stripes = WiringPicture.of(QUAYSIDE, side, Marks.NONE).shapes().stream()
                .filter(shape -> shape instanceof Shape.Box box && box.fill().equals(Tint.INK))
                .count();
        assertEquals(46, stripes);
    }

    private static List<List<Point>> bareEnds(Shape shape) {
        if (shape instanceof Shape.Line line && line.stroke().equals(LinkPainter.BARE)) {
            return List.of(line.points());
        } else if (shape instanceof Shape.Curve curve && curve.stroke().equals(LinkPainter.BARE)) {
            return List.of(List.of(curve.from(), curve.to()));
        }
        return List.of();
    }

    @ParameterizedTest
    @CsvSource({"row, rows", "row, columns", "column, rows", "column, columns"})
    void the_stripe_lies_nearer_to_the_net_that_it_faces(String stripe, String diodes) {
        Plan plan = small(stripe, diodes);
        for (Side side : Side.values()) {
            Positions positions = Positions.of(plan, side);
            List<Point> stripes = WiringPicture.of(plan, side, Marks.NONE).shapes().stream()
                    .filter(shape ->
                            shape instanceof Shape.Box box && box.fill().equals(Tint.INK))
                    .map(shape -> middle((Shape.Box) shape))
                    .toList();
            Point first = WiringPicture.of(plan, side, Marks.NONE).shapes().stream()
                    .filter(shape -> shape instanceof Shape.Box)
                    .map(shape -> middle((Shape.Box) shape))
                    .findFirst()
                    .orElseThrow();
            Key a = plan.keys().get(0);
            Point origin = new Point(
                    first.x() - positions.middle(a).x(),
                    first.y() - positions.middle(a).y());
            for (Key key : plan.keys()) {
                Point at = stripes.get(key.index()).moved(-origin.x(), -origin.y());
                double toJoint = at.to(positions.joint(new Joint(key.index(), plan.diodes())));
                double toPin = at.to(positions.diodePin(key));
                assertEquals(plan.stripe() == plan.diodes(), toJoint < toPin, key.name());
            }
        }
    }

    @Test
    void the_solder_side_is_the_cap_side_mirrored() {
        Positions caps = Positions.of(QUAYSIDE, Side.CAP);
        Positions solder = Positions.of(QUAYSIDE, Side.SOLDER);
        assertEquals(12 * 19.05, caps.width(), 1e-9);
        assertEquals(4 * 19.05, caps.height(), 1e-9);
        for (Key key : QUAYSIDE.keys()) {
            Stream.<Function<Positions, Point>>of(
                            at -> at.middle(key),
                            at -> at.diodePin(key),
                            at -> at.joint(new Joint(key.index(), NetKind.ROW)),
                            at -> at.joint(new Joint(key.index(), NetKind.COLUMN)))
                    .forEach(place -> {
                        assertEquals(
                                caps.width() - place.apply(caps).x(),
                                place.apply(solder).x(),
                                1e-9);
                        assertEquals(place.apply(caps).y(), place.apply(solder).y(), 1e-9);
                    });
        }
    }

    @Test
    void a_link_that_would_run_over_another_joint_goes_round_it() {
        Point from = new Point(0, 0);
        Point to = new Point(40, 0);
        List<Point> between = List.of(new Point(20, 0));
        assertEquals(0, Arc.bowed(from, to, 0, 1).clearance(between), 1e-9);
        assertEquals(4, Arc.bowed(from, to, 8, 1).clearance(between), 0.1);
    }

    @Test
    void marks_ring_their_joint_and_frame_their_key() {
        Marks marks = new Marks(Map.of(2, new Marks.KeyMark("o", true)), Map.of(new Joint(2, NetKind.ROW), "7"));
        Plan plan = small("row", "rows");
        Map<String, Long> plain = words(WiringPicture.of(plan, Side.CAP, Marks.NONE));
        Map<String, Long> marked = words(WiringPicture.of(plan, Side.CAP, marks));
        assertEquals(List.of(1L, 1L), List.of(marked.get("o"), marked.get("7")));
        assertTrue(!plain.containsKey("o") && !plain.containsKey("7"));
        assertEquals(2, count(WiringPicture.of(plan, Side.CAP, marks), Shape.Ring.class));
        assertEquals(0, count(WiringPicture.of(plan, Side.CAP, Marks.NONE), Shape.Ring.class));
    }

    private static long count(Drawing drawing, Class<? extends Shape> kind) {
        return drawing.shapes().stream().filter(kind::isInstance).count();
    }

    private static Point middle(Shape.Box box) {
        return box.corner().moved(box.width() / 2, box.height() / 2);
    }

    static Map<String, Long> words(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(shape -> shape instanceof Shape.Words)
                .map(shape -> ((Shape.Words) shape).text())
                .collect(Collectors.groupingBy(word -> word, Collectors.counting()));
    }
}
