package buzzout.screen;

import buzzout.circuit.Concerned;
import com.googlecode.lanterna.TerminalSize;
import java.util.List;
import java.util.OptionalInt;

/** Where everything goes on a screen of some size. */
final class Page {
    /** The smallest terminal that the board is drawn in. */
    static final TerminalSize LEAST = new TerminalSize(80, 24);

    /** Title, what to do, the subject, hints. */
    private static final int SINGLE_LINES = 4;

    /** What the findings and the last events need at least, headings included. */
    private static final int LEAST_PANES = 7;

    private static final int LEAST_EVENTS = 3;
    private static final int MOST_EVENTS = 12;

    /** From this many columns on, the findings and the last events stand side by side. */
    private static final int WIDE = 130;

    private static final int EVENT_COLUMNS = 52;

    private final View view;
    private final Pen pen;
    private final int callRows;
    private final int boardRows;
    private final int progressRows;

    private Page(View view, Pen pen) {
        this.view = view;
        this.pen = pen;
        this.progressRows = ProgressPainter.rows(view, pen);
        int most = pen.rows() - SINGLE_LINES - progressRows - LEAST_PANES;
        this.boardRows =
                Math.min(most, BoardPainter.scale(view, pen.columns(), most).rows());
        this.callRows = CallPainter.rows(view, pen.columns(), most - boardRows);
    }

    static boolean fits(TerminalSize size) {
        return size.getColumns() >= LEAST.getColumns() && size.getRows() >= LEAST.getRows();
    }

    static Sheet painted(View view, TerminalSize size) {
        Sheet sheet = new Sheet(size);
        Pen pen = Pen.on(sheet, view.look());
        if (fits(size)) {
            paint(view, pen);
        } else {
            paintTooSmall(pen);
        }
        return sheet;
    }

    private static void paint(View view, Pen pen) {
        TitlePainter.paint(view, pen.row(0));
        StagePainter.paint(view, pen.row(1));
        Hint.paint(view, pen.row(pen.rows() - 1));
        if (view.focus().help()) {
            HelpPainter.paint(view, pen.part(0, 2, pen.columns(), pen.rows() - 3));
        } else if (view.focus().bounce()) {
            BouncePainter.paint(view, pen.part(0, 2, pen.columns(), pen.rows() - 3));
        } else if (view.closeUp().isPresent()) {
            CloseUpPainter.paint(view, pen.part(0, 2, pen.columns(), pen.rows() - 3));
        } else {
            new Page(view, pen).paintSession();
        }
    }

    /** Scrolls the findings by so many panes, as far as they go. */
    static Focus scrolled(View view, TerminalSize size, int panes) {
        Pen findings = findings(view, size);
        int most = FindingsPainter.most(view, findings);
        int from = Math.min(view.focus().scroll(), most);
        return view.focus().scrolledTo(Math.max(0, Math.min(most, from + panes * Math.max(1, findings.rows() - 2))));
    }

    /** Chooses the finding so many further on, round and round, and brings it into view. */
    static Focus choosing(View view, TerminalSize size, int step) {
        int count = view.findings().size();
        if (count == 0) {
            return view.focus();
        }
        int from = view.chosen().isPresent() ? view.focus().finding().orElse(0) : step > 0 ? -1 : 0;
        int chosen = Math.floorMod(from + step, count);
        int key = Concerned.keys(
                        view.plan(), view.findings().get(chosen).first().fault())
                .findFirst()
                .orElse(view.subject());
        Focus unscrolled = view.focus().choosing(chosen, key, 0);
        View then = view.with(unscrolled);
        return unscrolled.scrolledTo(FindingsPainter.lineOf(then, findings(then, size), chosen));
    }

    /** On the first suspect of the chosen finding, or of the first one; then on the next suspect, then off. */
    static Focus lookingClose(View view, TerminalSize size) {
        if (view.findings().isEmpty() || view.focus().help()) {
            return view.focus();
        }
        if (view.closeUp().isEmpty()) {
            Focus chosen = view.chosen().isPresent() ? view.focus() : choosing(view, size, 1);
            return chosen.closeUp(OptionalInt.of(0));
        }
        int next = view.closeUp().getAsInt() + 1;
        boolean more = next < view.chosen().orElseThrow().suspects().size();
        return view.focus().closeUp(more ? OptionalInt.of(next) : OptionalInt.empty());
    }

    private static Pen findings(View view, TerminalSize size) {
        return new Page(view, Pen.on(new Sheet(size), view.look())).findings();
    }

    private void paintSession() {
        CallPainter.paint(view, pen.part(0, 2, pen.columns(), callRows));
        BoardPainter.paint(view, pen.part(0, boardTop(), pen.columns(), boardRows));
        ProgressPainter.paint(view, pen.part(0, boardTop() + boardRows, pen.columns(), progressRows));
        KeyPainter.paint(view, pen.row(panesTop() - 1));
        if (HeldPainter.isDue(view.session())) {
            HeldPainter.paint(view, findings());
        } else {
            FindingsPainter.paint(view, findings());
        }
        EventsPainter.paint(view, events());
    }

    private int panesTop() {
        return boardTop() + boardRows + progressRows + 1;
    }

    private int boardTop() {
        return 2 + callRows;
    }

    private int panesRows() {
        return pen.rows() - 1 - panesTop();
    }

    private boolean isWide() {
        return pen.columns() >= WIDE;
    }

    private int eventRows() {
        return Math.max(LEAST_EVENTS, Math.min(MOST_EVENTS, panesRows() / 3));
    }

    private Pen findings() {
        return isWide()
                ? pen.part(0, panesTop(), pen.columns() - EVENT_COLUMNS, panesRows())
                : pen.part(0, panesTop(), pen.columns(), panesRows() - eventRows());
    }

    private Pen events() {
        int left = pen.columns() - EVENT_COLUMNS;
        return isWide()
                ? pen.part(left, panesTop(), EVENT_COLUMNS, panesRows())
                : pen.part(0, panesTop() + panesRows() - eventRows(), pen.columns(), eventRows());
    }

    private static void paintTooSmall(Pen pen) {
        String needs = LEAST.getColumns() + " columns and " + LEAST.getRows() + " lines";
        List<String> lines = pen.wrap(
                "The board needs " + needs + "; this terminal has " + pen.columns() + " and " + pen.rows()
                        + ". Make it larger: the session goes on meanwhile. q quits.",
                pen.columns() - 2,
                0);
        if (lines.size() > pen.rows()) {
            lines = pen.wrap("Make it larger: " + needs + ". q quits.", pen.columns() - 2, 0);
        }
        int row = Math.max(0, Math.min(pen.rows() / 2 - 1, pen.rows() - lines.size()));
        for (String line : lines) {
            pen.put(1, row++, line, Ink.PLAIN);
        }
    }
}
