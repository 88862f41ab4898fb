package buzzout.screen;

import java.util.List;

/** The last events, newest at the bottom. */
final class EventsPainter {
    private static final int WIDTH_OF_TIME = 7;

    private EventsPainter() {}

    static void paint(View view, Pen pen) {
        Heading.paint(pen, "Last events", "");
        List<EventLines.Line> lines = view.snapshot().events().last(pen.rows() - 1);
        for (int row = 0; row < lines.size(); row++) {
            EventLines.Line line = lines.get(row);
            String at = seconds(line.atMillis());
            pen.put(1 + Math.max(0, WIDTH_OF_TIME - at.length()), row + 1, at + " s  " + line.text(), Ink.PLAIN);
        }
    }

    /** To a tenth. No format: there are dozens of lines in every frame. */
    private static String seconds(long millis) {
        long tenths = (millis + 50) / 100;
        return tenths / 10 + "." + tenths % 10;
    }
}
