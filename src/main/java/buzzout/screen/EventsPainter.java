package buzzout.screen;

import java.util.List;
import java.util.Locale;

/** The last events, newest at the bottom. */
final class EventsPainter {
    private EventsPainter() {}

    static void paint(View view, Pen pen) {
        Heading.paint(pen, "Last events", "");
        List<EventLines.Line> lines = view.snapshot().events().last(pen.rows() - 1);
        for (int row = 0; row < lines.size(); row++) {
            EventLines.Line line = lines.get(row);
            String at = String.format(Locale.ROOT, "%7.1f s  ", line.atMillis() / 1000.0);
            pen.put(1, row + 1, at + line.text(), Ink.PLAIN);
        }
    }
}
