package buzzout.screen;

/** A pane's name on a rule. */
final class Heading {
    private Heading() {}

    static void paint(Pen pen, String name, String remark) {
        pen.put(0, 0, "─".repeat(pen.columns()), Ink.PLAIN);
        pen.put(1, 0, " " + name + " ", Ink.STRONG);
        if (!remark.isEmpty()) {
            pen.part(0, 0, pen.columns() - 1, 1).putRight(0, " " + remark + " ", Ink.PLAIN);
        }
    }
}
