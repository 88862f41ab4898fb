package buzzout.line;

import java.util.List;

/** Words and beside each what it means, on 80 columns. */
public final class Columns {
    private static final int MARGIN = 2;

    private Columns() {}

    /** A word and its meaning. */
    public record Row(String word, String meaning) {}

    /**
     * The lines of a table, each ended.
     *
     * @param gap blanks between the longest word and its meaning
     */
    public static String of(List<Row> rows, int gap) {
        int longest = 0;
        for (Row row : rows) {
            longest = Math.max(longest, row.word.length());
        }
        int meanings = MARGIN + longest + gap;
        StringBuilder text = new StringBuilder();
        for (Row row : rows) {
            String start = " ".repeat(MARGIN) + row.word;
            String padded = start + " ".repeat(meanings - start.length());
            text.append(Paragraph.of(padded, row.meaning, meanings + MARGIN));
        }
        return text.toString();
    }
}
