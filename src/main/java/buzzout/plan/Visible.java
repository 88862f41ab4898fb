package buzzout.plan;

import java.util.Locale;

/** Text from a file, made fit to be shown: nothing in it can move a cursor or turn the reading direction. */
final class Visible {
    private static final int MOST_SHOWN = 60;

    private Visible() {}

    /** What does not print becomes a backslash, a u and its code point in hexadecimal. */
    static String of(String text) {
        if (prints(text)) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(point -> {
            if (prints(point) || point == ' ') {
                shown.appendCodePoint(point);
            } else {
                shown.append(String.format(Locale.ROOT, point < 0x10000 ? "\\u%04x" : "\\U%08x", point));
            }
        });
        return shown.toString();
    }

    /** In quotes, and cut where it is long. */
    static String quoted(String text) {
        if (text.codePointCount(0, text.length()) <= MOST_SHOWN) {
            return '"' + of(text) + '"';
        }
        return '"' + of(text.substring(0, text.offsetByCodePoints(0, MOST_SHOWN))) + "...\"";
    }

    /** Whether each code point leaves a mark of its own. */
    static boolean prints(String text) {
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            if (!prints(text.codePointAt(i))) {
                return false;
            }
        }
        return true;
    }

    /** Whether a code point leaves a mark of its own. */
    static boolean prints(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SPACE_SEPARATOR -> false;
            default -> true;
        };
    }
}
