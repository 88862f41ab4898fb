package buzzout.toml;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates and times as RFC 3339 writes them, each alone or both, and the seconds left out or not. */
final class Moments {
    private static final Pattern DAY = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");
    private static final Pattern TIME = Pattern.compile("([0-9]{2}):([0-9]{2})(?::([0-9]{2})(?:\\.[0-9]+)?)?");
    private static final Pattern OFFSET = Pattern.compile("[Zz]|[+-]([0-9]{2}:[0-9]{2})");

    private Moments() {}

    static boolean isOne(String word) {
        Matcher day = DAY.matcher(word);
        if (!day.lookingAt()) {
            return isTime(word);
        }
        if (!isThere(day)) {
            return false;
        }
        String rest = word.substring(day.end());
        if (rest.isEmpty()) {
            return true;
        }
        Matcher time = TIME.matcher(rest.substring(1));
        if ("Tt ".indexOf(rest.charAt(0)) < 0 || !time.lookingAt()) {
            return false;
        }
        String offset = rest.substring(1 + time.end());
        return isTime(time.group()) && (offset.isEmpty() || isOffset(offset));
    }

    private static boolean isThere(Matcher day) {
        try {
            LocalDate.of(
                    Integer.parseInt(day.group(1)), Integer.parseInt(day.group(2)), Integer.parseInt(day.group(3)));
            return true;
        } catch (DateTimeException noSuchDay) {
            return false;
        }
    }

    private static boolean isTime(String word) {
        Matcher time = TIME.matcher(word);
        try {
            if (!time.matches()) {
                return false;
            }
            String second = time.group(3);
            LocalTime.of(
                    Integer.parseInt(time.group(1)),
                    Integer.parseInt(time.group(2)),
                    second == null ? 0 : Integer.parseInt(second));
            return true;
        } catch (DateTimeException noSuchTime) {
            return false;
        }
    }

    private static boolean isOffset(String word) {
        Matcher offset = OFFSET.matcher(word);
        return offset.matches() && (offset.group(1) == null || isTime(offset.group(1)));
    }
}
