package buzzout.report;

import java.util.Locale;

/** A colour, as 0xRRGGBB. */
public record Tint(int rgb) {
    public static final Tint INK = new Tint(0x1E2226);
    public static final Tint PAPER = new Tint(0xFFFFFF);
    /** Recedes, and is still seen on paper. */
    public static final Tint FAINT = new Tint(0xA9AFB5);
    /** For areas behind text. */
    public static final Tint PALE = new Tint(0xEEF0F2);

    String hex() {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }
}
