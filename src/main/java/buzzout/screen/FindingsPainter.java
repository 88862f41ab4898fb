package buzzout.screen;

import java.util.List;

/** The findings, scrolled. */
final class FindingsPainter {
    private FindingsPainter() {}

    static void paint(View view, Pen pen) {
        Pen body = body(pen);
        List<FindingLines.Line> lines = FindingLines.of(view, body);
        int first = Math.min(view.focus().scroll(), most(lines, body));
        int last = Math.min(lines.size(), first + body.rows());
        boolean all = first == 0 && last == lines.size();
        Heading.paint(
                pen,
                "Findings",
                all ? "" : "lines " + (first + 1) + "–" + last + " of " + lines.size() + ", PgUp PgDn");
        for (int line = first; line < last; line++) {
            body.put(1, line - first, lines.get(line).text(), lines.get(line).ink());
        }
    }

    /** The most lines that it makes sense to scroll. */
    static int most(View view, Pen pen) {
        Pen body = body(pen);
        return most(FindingLines.of(view, body), body);
    }

    /** The line at which a finding begins. */
    static int lineOf(View view, Pen pen, int finding) {
        List<FindingLines.Line> lines = FindingLines.of(view, body(pen));
        for (int line = 0; line < lines.size(); line++) {
            if (lines.get(line).finding() == finding) {
                return line;
            }
        }
        return 0;
    }

    /** Below the heading. */
    private static Pen body(Pen pen) {
        return pen.part(0, 1, pen.columns(), pen.rows() - 1);
    }

    private static int most(List<FindingLines.Line> lines, Pen body) {
        return Math.max(0, lines.size() - body.rows());
    }
}
