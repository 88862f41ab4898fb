package buzzout.screen;

import com.googlecode.lanterna.TerminalTextUtils;

/** How many cells text takes. */
final class Width {
    /** Where characters that take two cells begin, and where symbols lie that take one (UAX #11, from memory). */
    private static final char FIRST_WIDE = 0x1100;

    private static final char FIRST_SYMBOL = 0x2000;
    private static final char LAST_SYMBOL = 0x2E7F;

    private Width() {}

    static int of(char character) {
        boolean narrow = character < FIRST_WIDE || (character >= FIRST_SYMBOL && character <= LAST_SYMBOL);
        return narrow || !TerminalTextUtils.isCharDoubleWidth(character) ? 1 : 2;
    }

    static int of(String text) {
        int columns = 0;
        for (int index = 0; index < text.length(); index++) {
            columns += of(text.charAt(index));
        }
        return columns;
    }
}
