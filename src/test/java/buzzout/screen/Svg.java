package buzzout.screen;

import java.util.Locale;

/** A screen's picture as SVG, for a page that shows what the program looks like. */
final class Svg {
    private static final double CELL_WIDTH = 8.43;
    private static final int CELL_HEIGHT = 16;
    private static final int BASELINE = 13;
    private static final int MARGIN = 12;
    private static final String PAPER = "#fbfaf7";
    private static final String INK = "#22262b";

    private final StringBuilder svg = new StringBuilder();

    private Svg() {}

    static String of(Sheet sheet, String title) {
        return new Svg().draw(sheet, title);
    }

    private String draw(Sheet sheet, String title) {
        int columns = sheet.columns();
        int rows = sheet.rows();
        double width = columns * CELL_WIDTH + 2 * MARGIN;
        int height = rows * CELL_HEIGHT + 2 * MARGIN;
        add("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %d\" role=\"img\">%n", width, height);
        add("<title>%s</title>%n", escaped(title));
        add("<rect width=\"100%%\" height=\"100%%\" rx=\"8\" fill=\"%s\"/>%n", PAPER);
        add("<g font-family=\"'DejaVu Sans Mono', Menlo, Consolas, monospace\" font-size=\"14\" fill=\"%s\">%n", INK);
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; ) {
                column = run(sheet, column, row);
            }
        }
        return svg.append("</g>\n</svg>\n").toString();
    }

    /** Draws the cells from here on that are alike; returns the column after them. */
    private int run(Sheet sheet, int from, int row) {
        Ink ink = sheet.ink(from, row);
        StringBuilder text = new StringBuilder();
        int to = from;
        while (to < sheet.columns() && isAlike(ink, sheet.ink(to, row))) {
            text.append(sheet.character(to++, row));
        }
        boolean reverse = ink.reverse();
        double left = MARGIN + from * CELL_WIDTH;
        double width = (to - from) * CELL_WIDTH;
        int top = MARGIN + row * CELL_HEIGHT;
        if (reverse) {
            add("<rect x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\"/>%n", left, top, width, CELL_HEIGHT);
        }
        if (!text.toString().isBlank()) {
            String colour = reverse ? PAPER : colour(ink.hue());
            String bold = ink.bold() ? " font-weight=\"bold\"" : "";
            add(
                    "<text x=\"%.2f\" y=\"%d\" textLength=\"%.2f\" xml:space=\"preserve\" fill=\"%s\"%s>%s</text>%n",
                    left, top + BASELINE, width, colour, bold, escaped(text.toString()));
        }
        return to;
    }

    private static boolean isAlike(Ink one, Ink other) {
        return one.bold() == other.bold() && one.reverse() == other.reverse() && one.hue() == other.hue();
    }

    private static String colour(Hue hue) {
        return switch (hue) {
            case OWN -> INK;
            case GREEN -> "#2f7d32";
            case RED -> "#b3261e";
        };
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }

    private void add(String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format.replace("%n", "\n"), values));
    }
}
