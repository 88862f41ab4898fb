package buzzout.screen;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalTextUtils;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;

/**
 * One character as it is written, which knows its width. Lanterna looks it up in the table of all blocks of Unicode, for
 * every cell of every frame, and that takes longer than all the rest of a frame.
 */
final class Glyph extends TextCharacter {
    static final Glyph BLANK = new Glyph(' ', TextColor.ANSI.DEFAULT);

    private static final long serialVersionUID = 1;

    /** Where characters that take two cells begin, and where symbols lie that take one (UAX #11, from memory). */
    private static final char FIRST_WIDE = 0x1100;

    private static final char FIRST_SYMBOL = 0x2000;
    private static final char LAST_SYMBOL = 0x2E7F;

    private final boolean wide;

    @SuppressWarnings("deprecation") // The only constructors that Lanterna leaves open are.
    Glyph(char character, TextColor colour, SGR... styles) {
        super(character, colour, TextColor.ANSI.DEFAULT, styles);
        this.wide = isWide(character);
    }

    /** Loads what the first one needs: Lanterna asks all that Java knows of characters whether it is one. */
    static void load() {
        BLANK.columns();
    }

    /** A blank is the paper's own: a screen that was cleared leaves it out. */
    @SuppressWarnings("ReferenceEquality")
    TextCharacter onPaper() {
        return this == BLANK ? DEFAULT_CHARACTER : this;
    }

    @Override
    public boolean isDoubleWidth() {
        return wide;
    }

    /** Most often it is compared with itself. */
    @Override
    public boolean equals(Object other) {
        return this == other || super.equals(other);
    }

    @Override
    public int hashCode() {
        return super.hashCode();
    }

    /** How many cells it takes. */
    int columns() {
        return wide ? 2 : 1;
    }

    /** How many cells a text takes. */
    static int columns(String text) {
        int columns = text.length();
        for (int index = 0; index < text.length(); index++) {
            columns += isWide(text.charAt(index)) ? 1 : 0;
        }
        return columns;
    }

    private static boolean isWide(char each) {
        boolean narrow = each < FIRST_WIDE || (each >= FIRST_SYMBOL && each <= LAST_SYMBOL);
        return !narrow && TerminalTextUtils.isCharDoubleWidth(each);
    }
}
