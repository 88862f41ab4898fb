package buzzout.screen;

/** Text from a wire or a file, made safe and countable for a terminal. */
final class Clean {
    private static final char UNKNOWN = '?';

    private Clean() {}

    /**
     * One line without control, direction or combining characters, or symbols that may print two cells wide; each is
     * shown as a question mark, and so is everything beyond ASCII that has no ASCII form where only that is wanted.
     */
    static String text(String text, boolean ascii) {
        if (isAllPrintableAscii(text)) {
            return text;
        }
        StringBuilder clean = new StringBuilder(text.length());
        for (int index = 0; index < text.length(); index += Character.charCount(text.codePointAt(index))) {
            int point = text.codePointAt(index);
            if (ascii && point > '~') {
                clean.append(ascii(point));
            } else {
                clean.append(point == '\t' ? ' ' : isPlain(point) ? (char) point : UNKNOWN);
            }
        }
        return clean.toString();
    }

    private static boolean isAllPrintableAscii(String text) {
        for (int index = 0; index < text.length(); index++) {
            if (text.charAt(index) < ' ' || text.charAt(index) > '~') {
                return false;
            }
        }
        return true;
    }

    private static boolean isPlain(int point) {
        if (isOwn(point)) {
            return true;
        }
        if (!Character.isBmpCodePoint(point) || isWideSymbol(point)) {
            return false;
        }
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.NON_SPACING_MARK,
                    Character.ENCLOSING_MARK,
                    Character.COMBINING_SPACING_MARK,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED -> false;
            case Character.OTHER_SYMBOL -> point <= 0xFF; // Many others print two cells in some terminals.
            default -> true;
        };
    }

    /**
     * What this program's own pages are made of, one cell each: ASCII, dashes, quotation marks and dots, arrows, box
     * drawing, blocks, shapes and the check mark. To ask Java about those would load its tables of all characters.
     */
    private static boolean isOwn(int point) {
        return (point >= ' ' && point <= '~')
                || (point >= 0x2010 && point <= 0x2027)
                || (point >= 0x2190 && point <= 0x21FF)
                || (point >= 0x2500 && point <= 0x25FF && !isWideSymbol(point))
                || point == '✓';
    }

    /** Of the symbols for which one cell is kept, those that print two (UAX #11, from memory). */
    private static boolean isWideSymbol(int point) {
        return point == 0x2329 || point == 0x232A || point == 0x25FD || point == 0x25FE;
    }

    private static String ascii(int point) {
        return switch (point) {
            case '→' -> "->";
            case '←' -> "<-";
            case '↑' -> "^";
            case '↓' -> "v";
            case '…' -> "...";
            case '–', '—', '─', '·', '−' -> "-";
            case '│' -> "|";
            case '═', '║', '╔', '╗', '╚', '╝' -> "*";
            case '‘', '’' -> "'";
            case '“', '”' -> "\"";
            case 'Ω' -> "Ohm";
            case 'µ', 'μ' -> "u";
            case '°' -> " deg ";
            case 0xA0, 0x202F -> " ";
            default -> point >= 0x2500 && point <= 0x257F ? "+" : String.valueOf(UNKNOWN);
        };
    }
}
