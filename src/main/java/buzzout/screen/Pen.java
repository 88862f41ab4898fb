package buzzout.screen;

import java.util.ArrayList;
import java.util.List;

/** Writes on one rectangle of the screen: whatever it is given is cleaned, and cut at the rectangle's edges. */
final class Pen {
    private final Sheet sheet;
    private final Look look;
    private final Area area;
    /** The part of the area that may be written on; a part of a scrolled board can lie outside its parent. */
    private final Area clip;

    /** A rectangle of cells; right and bottom lie just outside. */
    private record Area(int left, int top, int right, int bottom) {
        Area within(Area other) {
            return new Area(
                    Math.max(left, other.left),
                    Math.max(top, other.top),
                    Math.min(right, other.right),
                    Math.min(bottom, other.bottom));
        }
    }

    private Pen(Sheet sheet, Look look, Area area, Area clip) {
        this.sheet = sheet;
        this.look = look;
        this.area = area;
        this.clip = clip;
    }

    static Pen on(Sheet sheet, Look look) {
        Area all = new Area(0, 0, sheet.columns(), sheet.rows());
        return new Pen(sheet, look, all, all);
    }

    int columns() {
        return area.right - area.left;
    }

    int rows() {
        return area.bottom - area.top;
    }

    boolean ascii() {
        return look.ascii();
    }

    /** A pen for a rectangle given relative to this one; no part of it outside this one is written on. */
    Pen part(int column, int row, int partColumns, int partRows) {
        int left = area.left + column;
        int top = area.top + row;
        Area part = new Area(left, top, left + Math.max(0, partColumns), top + Math.max(0, partRows));
        return new Pen(sheet, look, part, part.within(clip));
    }

    /** A pen for everything from a column on to the right edge. */
    Pen from(int column) {
        return part(column, 0, columns() - column, rows());
    }

    Pen row(int row) {
        return part(0, row, columns(), 1);
    }

    void put(int column, int row, String text, Ink ink) {
        int left = area.left + column;
        int at = area.top + row;
        if (at < clip.top || at >= clip.bottom) {
            return;
        }
        String shown = clean(text);
        int next = left;
        for (int index = 0; index < shown.length(); index++) {
            int after = next + Width.of(shown.charAt(index));
            if (next >= clip.left && after <= clip.right) {
                sheet.put(next, at, shown.charAt(index), ink);
            }
            next = after;
        }
    }

    /** Ends at the right edge. */
    void putRight(int row, String text, Ink ink) {
        put(columns() - width(text), row, text, ink);
    }

    void fill(Ink ink) {
        for (int row = Math.max(area.top, clip.top); row < Math.min(area.bottom, clip.bottom); row++) {
            for (int column = Math.max(area.left, clip.left); column < Math.min(area.right, clip.right); column++) {
                sheet.put(column, row, ' ', ink);
            }
        }
    }

    /** How many columns this text takes. */
    int width(String text) {
        return Width.of(clean(text));
    }

    String clean(String text) {
        return Clean.text(text, look.ascii());
    }

    /** The text in lines that fit a number of columns, the later ones indented. */
    List<String> wrap(String text, int within, int indent) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int used = 0;
        boolean begun = false;
        for (String word : clean(text).split(" ", -1)) {
            int width = Width.of(word);
            if (begun && used + 1 + width > within) {
                lines.add(line.toString());
                line = new StringBuilder(" ".repeat(indent)).append(word);
                used = indent + width;
            } else {
                line.append(begun ? " " : "").append(word);
                used += width + (begun ? 1 : 0);
            }
            begun = true;
        }
        lines.add(line.toString());
        return lines;
    }
}
