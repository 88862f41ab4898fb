package buzzout.screen;

import buzzout.report.BounceText;
import buzzout.session.Bounces;
import java.util.List;

/** How long the contacts bounced: in place of the board, a histogram and the keys that bounced longest. */
final class BouncePainter {
    private static final int BAR_COLUMNS = 30;
    private static final int PROOF_ROWS = 4;

    private BouncePainter() {}

    static void paint(View view, Pen pen) {
        Bounces bounces = view.session().bounces();
        Heading.paint(pen.row(0), "Bounce", "at the press or when let go, whichever is longer");
        int row = 1;
        for (String line : pen.wrap(BounceText.sum(view.plan(), bounces), pen.columns() - 2, 0)) {
            pen.put(1, row++, line, Ink.PLAIN);
        }
        if (bounces.presses() == 0) {
            return;
        }
        for (String line : BounceText.histogram(bounces, Math.min(BAR_COLUMNS, pen.columns() - BAR_COLUMNS))) {
            pen.put(1, row++, line, line.endsWith(" 0  over") || !line.endsWith("over") ? Ink.PLAIN : Ink.WRONG);
        }
        int room = Math.max(1, pen.rows() - row - PROOF_ROWS - 2);
        List<String> table = BounceText.table(view.plan(), bounces, room);
        for (String line : table) {
            pen.put(0, row++, line, line.contains("  over in ") ? Ink.WRONG : Ink.PLAIN);
        }
        for (String sentence : BounceText.proof(bounces)) {
            for (String line : pen.wrap(sentence, pen.columns() - 2, 0)) {
                pen.put(1, row++, line, Ink.PLAIN);
            }
        }
    }
}
