package buzzout.report;

import java.text.Normalizer;

/** How wide text is in Helvetica, for which any reader of PDF has a face of the same widths. */
final class TextWidth {
    /** Thousandths of an em for U+0020 to U+007E: the face's published metrics; a test holds them to a PDF library's. */
    private static final int[] WIDTHS = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, //
        556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, //
        1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, //
        667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, //
        333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, //
        556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
    };

    /** For what has no width above. */
    private static final int WIDE = 1000;

    /** Bold letters are wider by so much at most, on average over a word. */
    private static final double BOLD = 1.1;

    private TextWidth() {}

    /** In millimetres, at a size in millimetres; a little generous for bold text. */
    static double of(String text, boolean bold, double size) {
        int sum = text.codePoints().map(TextWidth::of).sum();
        return sum * size / 1000 * (bold ? BOLD : 1);
    }

    /** The size that makes a text fit some room, at most {@code size}. */
    static double fitting(String text, boolean bold, double size, double room) {
        double width = of(text, bold, size);
        return width <= room ? size : size * room / width;
    }

    private static int of(int point) {
        if (point >= ' ' && point <= '~') {
            return WIDTHS[point - ' '];
        }
        int base = Normalizer.normalize(Character.toString(point), Normalizer.Form.NFD)
                .codePointAt(0);
        return base != point && base >= ' ' && base <= '~' ? WIDTHS[base - ' '] : WIDE;
    }
}
