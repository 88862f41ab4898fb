package buzzout.report;

import buzzout.report.Checklist.Section;
import buzzout.report.Checklist.Step;
import java.util.ArrayList;
import java.util.List;

/** A checklist set in columns on sheets. */
final class ChecklistSheets {
    private static final int COLUMNS = 3;
    private static final double GUTTER = 8;
    private static final double COLUMN = (Paper.DRAWN_WIDTH - (COLUMNS - 1) * GUTTER) / COLUMNS;
    private static final double TOP = 16;
    private static final double SIZE = 3;
    private static final double LEADING = 4.3;
    private static final double BOX = 2.6;

    /** A box and its words keep this much to the next on their line. */
    private static final double BETWEEN = 3.5;

    private final String board;
    private final List<Drawing> done = new ArrayList<>();
    private List<Shape> shapes = new ArrayList<>();
    private int column;
    private double y = TOP;
    private double x;

    private ChecklistSheets(String board) {
        this.board = board;
    }

    static List<Drawing> of(String board, Checklist checklist) {
        ChecklistSheets sheets = new ChecklistSheets(board);
        sheets.head();
        checklist.sections().forEach(sheets::section);
        sheets.close();
        return sheets.done;
    }

    private void head() {
        shapes.addAll(WiringSheets.title(board, "soldering checklist" + (done.isEmpty() ? "" : ", continued")));
    }

    private void section(Section section) {
        need(7 * LEADING);
        y += column > 0 && y == TOP ? 0 : LEADING / 2;
        line(section.title(), 4.2, true);
        y += 1;
        section.says().forEach(says -> paragraph(says, ""));
        section.steps().forEach(step -> step(section, step));
        y += LEADING / 2;
    }

    private void step(Section section, Step step) {
        need(2.5 * LEADING);
        y += 1.2;
        if (section.steps().size() > 1) {
            paragraph(step.says(), step.title() + "  ");
        }
        x = 0;
        for (String box : step.boxes()) {
            box(box);
        }
        y += x > 0 ? LEADING : 0;
        x = 0;
    }

    private void box(String says) {
        double width = Math.min(COLUMN, BOX + 1.2 + TextWidth.of(says, false, SIZE));
        if (x > 0 && x + width > COLUMN) {
            y += LEADING;
            x = 0;
        }
        need(LEADING);
        Point corner = new Point(left() + x, y + LEADING - BOX - 0.8);
        shapes.add(new Shape.Box(corner, BOX, BOX, Tint.PAPER, new Stroke(Tint.INK, 0.3)));
        double size = TextWidth.fitting(says, false, SIZE, COLUMN - BOX - 1.2);
        shapes.add(WiringSheets.words(left() + x + BOX + 1.2, y + LEADING - 1.1, size, false, says));
        // Boxes stand at a few stops, so that the eye finds them.
        double stop = COLUMN / 3;
        x = Math.ceil((x + width + BETWEEN - 1e-9) / stop) * stop;
    }

    /** Begins in bold with a lead. */
    private void paragraph(String says, String lead) {
        double indent = TextWidth.of(lead, true, SIZE);
        StringBuilder line = new StringBuilder();
        boolean first = true;
        for (String word : says.split(" ", -1)) {
            double room = COLUMN - (first ? indent : 0);
            if (line.length() > 0 && TextWidth.of(line + " " + word, false, SIZE) > room) {
                set(first ? lead : "", first ? indent : 0, line.toString());
                first = false;
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        set(first ? lead : "", first ? indent : 0, line.toString());
    }

    private void set(String lead, double indent, String line) {
        need(LEADING);
        y += LEADING;
        if (!lead.isBlank()) {
            shapes.add(WiringSheets.words(left(), y - 1.1, SIZE, true, lead.strip()));
        }
        shapes.add(WiringSheets.words(left() + indent, y - 1.1, SIZE, false, line));
    }

    private void line(String text, double size, boolean bold) {
        y += LEADING * size / SIZE;
        shapes.add(WiringSheets.words(left(), y - 1.1, size, bold, text));
    }

    private double left() {
        return column * (COLUMN + GUTTER);
    }

    /** Goes on in the next column, or on the next sheet, unless there is so much room. */
    private void need(double height) {
        if (y + height <= Paper.DRAWN_HEIGHT) {
            return;
        }
        y = TOP;
        if (++column == COLUMNS) {
            close();
            column = 0;
            head();
        }
    }

    private void close() {
        done.add(new Drawing(Paper.DRAWN_WIDTH, Paper.DRAWN_HEIGHT, shapes));
        shapes = new ArrayList<>();
    }
}
