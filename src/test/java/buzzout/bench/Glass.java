package buzzout.bench;

import java.util.Arrays;
import java.util.regex.Pattern;

/** What a terminal would show: as much of its escape sequences as the program writes. */
final class Glass {
    private static final char ESCAPE = 0x1B;
    private static final char BELL = 7;

    private final char[][] cells;
    private final StringBuilder sequence = new StringBuilder();
    private int row;
    private int column;
    private int rings;

    Glass(int columns, int rows) {
        cells = new char[rows][columns];
        clear();
    }

    void take(String text) {
        text.chars().forEach(each -> take((char) each));
    }

    boolean shows(String words) {
        return Arrays.stream(cells).anyMatch(line -> new String(line).contains(words));
    }

    boolean shows(Pattern words) {
        return Arrays.stream(cells)
                .anyMatch(line -> words.matcher(new String(line)).find());
    }

    /** How often its bell rang. */
    int rings() {
        return rings;
    }

    String text() {
        StringBuilder text = new StringBuilder();
        for (char[] line : cells) {
            text.append(new String(line).stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private void take(char next) {
        if (!sequence.isEmpty() || next == ESCAPE) {
            sequence.append(next);
            if (isWhole()) {
                obey(sequence.toString());
                sequence.setLength(0);
            }
        } else if (next == '\r') {
            column = 0;
        } else if (next == '\n') {
            row = Math.min(row + 1, cells.length - 1);
        } else if (next == BELL) {
            rings++;
        } else if (next >= ' ') {
            cells[row][Math.min(column++, cells[row].length - 1)] = next;
        }
    }

    /** {@code ESC [ … letter}, or two characters. */
    private boolean isWhole() {
        char last = sequence.charAt(sequence.length() - 1);
        return sequence.length() >= 2 && (sequence.charAt(1) != '[' || (sequence.length() > 2 && last >= '@'));
    }

    private void obey(String whole) {
        char verb = whole.charAt(whole.length() - 1);
        if (verb == 'H' && whole.length() > 3) {
            String[] at = whole.substring(2, whole.length() - 1).split(";", -1);
            row = Math.min(Integer.parseInt(at[0]), cells.length) - 1;
            column = Integer.parseInt(at[1]) - 1;
        } else if (verb == 'J') {
            clear();
        }
    }

    private void clear() {
        Arrays.stream(cells).forEach(line -> Arrays.fill(line, ' '));
    }
}
