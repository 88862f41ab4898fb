package buzzout.report;

import buzzout.probe.Printable;
import java.util.ArrayList;
import java.util.List;

/** Plain text in lines of at most 80 columns. */
final class Page {
    private static final int WIDTH = 80;

    private final boolean ascii;
    private final StringBuilder text = new StringBuilder();

    Page(boolean ascii) {
        this.ascii = ascii;
    }

    Page gap() {
        text.append('\n');
        return this;
    }

    /** A paragraph that begins with {@code lead} and whose further lines begin below the end of the lead. */
    Page paragraph(String lead, String says) {
        return paragraph(lead, lead.length(), says);
    }

    /** A paragraph that begins with {@code lead} and whose further lines are indented by so many columns. */
    Page paragraph(String lead, int indent, String says) {
        String begin = lead;
        for (String line : wrapped(Printable.of(plain(says)), WIDTH - lead.length(), WIDTH - indent)) {
            text.append((begin + line).stripTrailing()).append('\n');
            begin = " ".repeat(indent);
        }
        return this;
    }

    Page paragraph(String says) {
        return paragraph("", says);
    }

    private String plain(String says) {
        return ascii
                ? says.replace("→", "->")
                        .replace("↔", "<->")
                        .replace("Ω", "ohm")
                        .replace("µ", "u")
                : says;
    }

    /** Breaks at spaces; a word that is wider than the room stays whole. */
    private static List<String> wrapped(String says, int firstRoom, int room) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : says.split(" ", -1)) {
            int most = lines.isEmpty() ? firstRoom : room;
            if (line.length() > 0 && width(line) + 1 + width(word) > most) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static int width(CharSequence text) {
        return Character.codePointCount(text, 0, text.length());
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
