package buzzout.journal;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/** A moment as ISO 8601 writes it; the usual form without Java's formatter, which takes its time to load. */
public final class WrittenTime {
    private static final String USUAL = "0000-00-00T00:00:00";
    private static final String OFFSET = "00:00";

    private WrittenTime() {}

    /** Such as {@code 2026-11-25T10:14:05+01:00}. */
    public static String of(OffsetDateTime at) {
        if (at.getNano() != 0) {
            return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at);
        }
        return at.toLocalDate() + "T" + two(at.getHour()) + ":" + two(at.getMinute()) + ":" + two(at.getSecond())
                + at.getOffset();
    }

    /** @throws DateTimeException if it is no moment */
    static OffsetDateTime read(String text) {
        if (!isUsual(text)) {
            return OffsetDateTime.parse(text);
        }
        return OffsetDateTime.of(
                LocalDateTime.of(
                        number(text, 0, 4),
                        number(text, 5, 7),
                        number(text, 8, 10),
                        number(text, 11, 13),
                        number(text, 14, 16),
                        number(text, 17, 19)),
                ZoneOffset.of(text.substring(USUAL.length())));
    }

    /** Whether it is a date and time, and then an offset. */
    private static boolean isUsual(String text) {
        int end = USUAL.length();
        return hasShape(text, 0, USUAL)
                && (text.substring(end).equals("Z")
                        || (text.length() == end + 1 + OFFSET.length()
                                && "+-".indexOf(text.charAt(end)) >= 0
                                && hasShape(text, end + 1, OFFSET)));
    }

    /** Whether digits stand where noughts do in the shape, and the same characters elsewhere. */
    private static boolean hasShape(String text, int from, String shape) {
        if (text.length() < from + shape.length()) {
            return false;
        }
        for (int i = 0; i < shape.length(); i++) {
            char each = text.charAt(from + i);
            if (shape.charAt(i) == '0' ? each < '0' || each > '9' : each != shape.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private static int number(String text, int from, int to) {
        return Integer.parseInt(text, from, to, 10);
    }

    static String two(int number) {
        return number < 10 ? "0" + number : String.valueOf(number);
    }
}
