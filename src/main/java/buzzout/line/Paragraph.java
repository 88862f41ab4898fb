package buzzout.line;

/** Text on 80 columns. A line ends only where a blank was, and keeps the last column free if the text goes on. */
final class Paragraph {
    private static final int WIDTH = 80;

    private Paragraph() {}

    /**
     * The lines of a paragraph, each ended.
     *
     * @param start what stands before it
     * @param indent blanks before all lines but the first
     */
    static String of(String start, String text, int indent) {
        StringBuilder lines = new StringBuilder(start);
        int column = start.length();
        String[] words = text.split(" ", -1);
        for (int at = 0; at < words.length; at++) {
            String word = words[at];
            int most = at == words.length - 1 ? WIDTH : WIDTH - 1;
            if (at > 0 && column + 1 + word.length() > most) {
                lines.append('\n').append(" ".repeat(indent));
                column = indent;
            } else if (at > 0) {
                lines.append(' ');
                column++;
            }
            lines.append(word);
            column += word.length();
        }
        return lines.append('\n').toString();
    }
}
