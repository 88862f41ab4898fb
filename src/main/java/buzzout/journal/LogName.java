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
        return started.toLocalDate() + "T" + WrittenTime.two(started.getHour()) + "-"
                + WrittenTime.two(started.getMinute()) + "-" + WrittenTime.two(started.getSecond());
    }

    /** Letters, digits, dots and hyphens only, so that no mark can lead out of the folder. */
    private static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        int end = 0;
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int point = text.codePointAt(i);
            if (isLetterOrNumber(point) || (point == '.' && end > 0)) {
                plain.appendCodePoint(point);
                end = point == '.' ? end : plain.length();
            } else if (end > 0 && plain.charAt(plain.length() - 1) != '-') {
                plain.append('-');
            }
        }
        plain.setLength(Math.min(end, MOST_LETTERS));
        return plain.isEmpty() ? "board" : plain.toString();
    }

    private static boolean isLetterOrNumber(int point) {
        return switch (Character.getType(point)) {
            case Character.LETTER_NUMBER, Character.OTHER_NUMBER -> true;
            default -> Character.isLetterOrDigit(point);
        };
    }
}
