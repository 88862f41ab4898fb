package buzzout.screen;

import com.googlecode.lanterna.TerminalTextUtils;
import com.googlecode.lanterna.graphics.TextGraphics;
import java.util.ArrayList;
import java.util.List;

/** Writes on one rectangle of the screen: whatever it is given is cleaned, and cut at the rectangle's edges. */
final class Pen {
    private final TextGraphics paper;
    private final Look look;
    private final int left;
    private final int top;
    private final int columns;
    private final int rows;

    private Pen(TextGraphics paper, Look look, int left, int top, int columns, int rows) {
        this.paper = paper;
        this.look = look;
        this.left = left;
        this.top = top;
        this.columns = Math.max(0, columns);
        this.rows = Math.max(0, rows);
    }

    static Pen on(TextGraphics paper, Look look) {
        return new Pen(
                paper, look, 0, 0, paper.getSize().getColumns(), paper.getSize().getRows());
    }

    int columns() {
        return columns;
    }

    int rows() {
        return rows;
    }

    boolean ascii() {
        return look.ascii();
    }

    /** A pen for part of this rectangle. */
    Pen part(int column, int row, int partColumns, int partRows) {
        return new Pen(
                paper,
                look,
                left + column,
                top + row,
                Math.min(partColumns, columns - column),
                Math.min(partRows, rows - row));
    }

    Pen row(int row) {
        return part(0, row, columns, 1);
    }

    void put(int column, int row, String text, Ink ink) {
        if (row < 0 || row >= rows || column >= columns) {
            return;
        }
        String clean = clean(text);
        int cut = Math.max(0, -column);
        String shown = TerminalTextUtils.fitString(clean, cut, columns - column - cut);
        if (shown.isEmpty()) {
            return;
        }
        paper.setForegroundColor(ink.colour(look));
        paper.clearModifiers();
        paper.enableModifiers(ink.styles());
        paper.putString(left + column + cut, top + row, shown);
    }

    /** Ends at the right edge. */
    void putRight(int row, String text, Ink ink) {
        put(columns - width(text), row, text, ink);
    }

    void fill(Ink ink) {
        for (int row = 0; row < rows; row++) {
            put(0, row, " ".repeat(columns), ink);
        }
    }

    /** How many columns this text takes. */
    int width(String text) {
        return TerminalTextUtils.getColumnWidth(clean(text));
    }

    String clean(String text) {
        return Clean.text(text, look.ascii());
    }

    /** The text in lines that fit a number of columns, the later ones indented. */
    List<String> wrap(String text, int within, int indent) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int used = 0;
        for (String word : clean(text).split(" ", -1)) {
            int width = TerminalTextUtils.getColumnWidth(word);
            if (used > 0 && used + 1 + width > within) {
                lines.add(line.toString());
                line = new StringBuilder(" ".repeat(indent)).append(word);
                used = indent + width;
            } else {
                line.append(used > 0 ? " " : "").append(word);
                used += width + (used > 0 ? 1 : 0);
            }
        }
        lines.add(line.toString());
        return lines;
    }
}
