package buzzout.probe;

/**
 * Makes text from outside safe to print: what could move a cursor, start an escape or turn the writing direction becomes
 * a code such as {@code \x1B}.
 */
public final class Printable {
    private static final int LONGEST_SAMPLE = 48;

    private Printable() {}

    /** Bytes of a line, cut to a sample; everything but printable ASCII becomes a code. */
    static String of(byte[] bytes, int length) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < length; i++) {
            if (text.length() >= LONGEST_SAMPLE) {
                return text.append("...").toString();
            }
            int code = bytes[i] & 0xFF;
            append(text, code, code >= 0x20 && code <= 0x7E);
        }
        return text.toString();
    }

    /** Text such as a port's description; letters of any script stay, control and format characters become codes. */
    public static String of(String text) {
        if (isPrintable(text)) {
            return text;
        }
        StringBuilder printable = new StringBuilder();
        text.codePoints().forEach(code -> append(printable, code, isPrintable(code)));
        return printable.toString();
    }

    private static void append(StringBuilder text, int code, boolean printable) {
        if (printable) {
            text.appendCodePoint(code);
        } else {
            text.append(code <= 0xFF ? "\\x%02X".formatted(code) : "\\u%04X".formatted(code));
        }
    }

    private static boolean isPrintable(String text) {
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            if (!isPrintable(text.codePointAt(at))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isPrintable(int code) {
        if (code >= ' ' && code <= '~') {
            return true;
        }
        return switch (Character.getType(code)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
