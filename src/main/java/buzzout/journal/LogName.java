package buzzout.journal;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.Optional;

/** What a session log is called when nobody says: {@code quayside-46-Q-03-2026-11-25T10-14-05.jsonl}. */
final class LogName {
    private static final int MOST_LETTERS = 40;

    private LogName() {}

    /** The {@code number}th try at a name in a folder; from the second on it ends in the number. */
    static Path in(Path folder, String board, Optional<String> unit, OffsetDateTime started, int number) {
        String copy = number == 1 ? "" : "-" + number;
        return folder.resolve(plain(board).toLowerCase(Locale.ROOT)
                + unit.map(mark -> "-" + plain(mark)).orElse("")
                + "-" + time(started) + copy + ".jsonl");
    }

    private static String time(OffsetDateTime started) {
        return started.toLocalDate() + "T" + two(started.getHour()) + "-" + two(started.getMinute()) + "-"
                + two(started.getSecond());
    }

    private static String two(int number) {
        return number < 10 ? "0" + number : String.valueOf(number);
    }

    /** Letters, digits, dots and hyphens only, so that no mark can lead out of the folder. */
    private static String plain(String text) {
        String plain = text.replaceAll("[^\\p{L}\\p{N}.]+", "-").replaceAll("^[-.]+|[-.]+$", "");
        String cut = plain.length() > MOST_LETTERS ? plain.substring(0, MOST_LETTERS) : plain;
        return cut.isEmpty() ? "board" : cut;
    }
}
