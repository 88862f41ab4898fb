package buzzout.report;

import buzzout.plan.Plan;
import buzzout.plan.Side;
import buzzout.report.Shape.Anchor;
import buzzout.report.Shape.Disc;
import buzzout.report.Shape.Line;
import buzzout.report.Shape.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The sheets of a wiring drawing, each of the size that fits both papers. */
final class WiringSheets {
    private static final double HEAD = 15;
    private static final double FOOT = 17;

    /** Around a sheet that no paper surrounds. */
    private static final double MARGIN = 6;

    private WiringSheets() {}

    /** The cap side, the solder side, and as many sheets of checklist as it takes. */
    static List<Drawing> of(Plan plan) {
        return Stream.concat(
                        Stream.of(Side.values()).map(side -> side(plan, side)),
                        ChecklistSheets.of(plan.name(), SolderingOrder.of(plan)).stream())
                .toList();
    }

    /** All of them below each other, with a margin around each. */
    static Drawing stacked(List<Drawing> sheets) {
        double step = Paper.DRAWN_HEIGHT + 2 * MARGIN;
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            sheets.get(i).placed(1, MARGIN, i * step + MARGIN).forEach(shapes::add);
        }
        return new Drawing(Paper.DRAWN_WIDTH + 2 * MARGIN, sheets.size() * step, shapes);
    }

    static Drawing side(Plan plan, Side side) {
        Drawing board = WiringPicture.of(plan, side, Marks.NONE);
        double roomHigh = Paper.DRAWN_HEIGHT - HEAD - FOOT;
        double scale = Math.min(1, Math.min(Paper.DRAWN_WIDTH / board.width(), roomHigh / board.height()));
        List<Shape> shapes = new ArrayList<>(title(
                plan.name(),
                side == Side.CAP
                        ? "cap side: the wiring as it lies behind the plate"
                        : "solder side: as you see it with the iron in your hand, left and right mirrored"));
        shapes.add(words(
                0,
                11.5,
                3.2,
                false,
                scaleSays(scale)
                        + " R2.3 is the third joint of R2 in solder order; findings use the same numbers. Where pins sit on a"
                        + " switch is not to scale."));
        board.placed(
                        scale,
                        (Paper.DRAWN_WIDTH - scale * board.width()) / 2,
                        HEAD + (roomHigh - scale * board.height()) / 2)
                .forEach(shapes::add);
        shapes.addAll(legend(plan));
        shapes.addAll(ruler(scale));
        return new Drawing(Paper.DRAWN_WIDTH, Paper.DRAWN_HEIGHT, shapes);
    }

    static List<Shape> title(String name, String says) {
        return List.of(words(0, 6, 6, true, name), words(TextWidth.of(name, true, 6) + 5, 6, 4, false, says));
    }

    private static String scaleSays(double scale) {
        return scale == 1
                ? "True to size when printed at 100 %."
                : String.format(Locale.ROOT, "1 mm here is %.2f mm on the board when printed at 100 %%.", 1 / scale);
    }

    /** Five centimetres of the board, to be held against a rule. */
    private static List<Shape> ruler(double scale) {
        double right = Paper.DRAWN_WIDTH - 1;
        double y = Paper.DRAWN_HEIGHT - 2;
        List<Shape> shapes = new ArrayList<>();
        Stroke stroke = new Stroke(Tint.INK, 0.3);
        shapes.add(Line.between(new Point(right - 50 * scale, y), new Point(right, y), stroke));
        for (int centimetre = 0; centimetre <= 5; centimetre++) {
            Point at = new Point(right - 10 * centimetre * scale, y);
            shapes.add(Line.between(at, at.moved(0, -1.6), stroke));
        }
        shapes.add(
                new Words(new Point(right - 50 * scale - 2, y), 3, Anchor.END, false, Tint.INK, "50 mm on the board"));
        return shapes;
    }

    private static List<Shape> legend(Plan plan) {
        List<Shape> shapes = new ArrayList<>();
        double y = Paper.DRAWN_HEIGHT - 9.5;
        double x = 1;
        String chain = plan.diodes().word();
        String wire = plan.diodes().other().word();
        Stroke edge = new Stroke(Tint.INK, 0.4);
        x = entry(shapes, x, y, "joint", 4, List.of(new Disc(new Point(x + 1.5, y), 0.85, Tint.INK, edge)));
        x = entry(
                shapes,
                x,
                y,
                "joint with the lead",
                5,
                List.of(
                        Shape.Box.around(new Point(x + 2, y), 3.4, 3.4, Tint.PAPER, new Stroke(Tint.INK, 0.5)),
                        new Disc(new Point(x + 2, y), 0.85, Tint.INK, edge)));
        x = entry(
                shapes,
                x,
                y,
                "switch pin with the diode",
                4,
                List.of(new Disc(new Point(x + 1.5, y), 0.85, Tint.PAPER, edge)));
        List<Shape> diode = new ArrayList<>();
        diode.add(Line.between(new Point(x, y), new Point(x + 10, y), LinkPainter.BARE));
        diode.addAll(DiodeSymbol.between(new Point(x, y), new Point(x + 10, y), true));
        x = entry(shapes, x, y, "diode, its stripe towards the " + plan.stripe().word(), 12, diode);
        x = entry(
                shapes,
                x,
                y,
                chain + ": bent legs",
                10,
                List.of(Line.between(new Point(x, y), new Point(x + 8, y), LinkPainter.BARE)));
        List<Shape> stripped = new ArrayList<>();
        stripped.add(Line.between(new Point(x, y), new Point(x + 14, y), LinkPainter.BARE));
        for (double from : new double[] {0, 9}) {
            Point start = new Point(x + from, y);
            stripped.add(Line.between(start, start.moved(5, 0), new Stroke(Tint.INK, 1.6)));
            stripped.add(Line.between(start, start.moved(5, 0), new Stroke(new Tint(0xD5D9DD), 1.1)));
        }
        stripped.add(new Disc(new Point(x + 7, y), 0.85, Tint.INK, edge));
        entry(shapes, x, y, wire + ": wire, bare at its joints", 16.5, stripped);
        return shapes;
    }

    /** Adds a symbol and its words; returns where the next may begin. */
    private static double entry(List<Shape> shapes, double x, double y, String says, double symbol, List<Shape> drawn) {
        shapes.addAll(drawn);
        shapes.add(words(x + symbol, y + 1, 2.9, false, says));
        return x + symbol + TextWidth.of(says, false, 2.9) + 4;
    }

    static Words words(double x, double y, double size, boolean bold, String text) {
        return new Words(new Point(x, y), size, Anchor.START, bold, Tint.INK, text);
    }
}
