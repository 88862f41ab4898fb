package buzzout.screen;

import buzzout.session.Session;

/** The top line: which board and unit, seen from which side, whether it is muted, and how the link stands. */
final class TitlePainter {
    private TitlePainter() {}

    static void paint(View view, Pen pen) {
        String name = view.plan().name()
                + view.setting().unit().map(unit -> "  " + unit).orElse("");
        String side = view.focus().side().words();
        Pen left = pen.part(1, 0, pen.columns() * 2 / 5, 1);
        left.put(0, 0, name, Ink.STRONG);
        int from = Math.min(left.columns(), pen.width(name)) + 4;
        pen.put(from, 0, side, Ink.STRONG);
        Pen right = pen.from(from + pen.width(side) + 2);
        Pen inner = right.part(0, 0, right.columns() - 1, 1);
        String link = muted(view.setting().sound()) + link(view);
        inner.put(Math.max(0, inner.columns() - inner.width(link)), 0, link, Ink.PLAIN);
    }

    private static String muted(Sound sound) {
        return sound.offered() && sound.muted() ? "muted  " : "";
    }

    private static String link(View view) {
        Session session = view.session();
        if (session.linkTrouble().isPresent()) {
            return "link down";
        }
        String chip = session.probe().map(probe -> probe.chip()).orElse("no probe yet");
        return chip + session.port().map(port -> " on " + port).orElse("");
    }
}
