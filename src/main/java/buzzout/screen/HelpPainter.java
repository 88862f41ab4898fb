package buzzout.screen;

import buzzout.session.KeyState;
import java.util.List;

/** What the marks mean, what the keys do, how a session goes. */
final class HelpPainter {
    private static final List<String> COURSE = List.of(
            "Plug the probe in; hands off while the quiet check looks for bridges and held",
            "switches. Press every key, in any order or as called (c). One that does not answer:",
            "select it and type n. Unplug before you solder; type d for the chosen",
            "finding, and what its repair can have changed is called again.");

    private static final List<Hint> STROKES = List.of(
            new Hint("arrows", "select a key"),
            new Hint("s v", "turn over; a finding's joint"),
            new Hint("n", "it was pressed, nothing came"),
            new Hint("r", "read through; again at its end"),
            new Hint("t", "name the next joint to touch"),
            new Hint("e", "every key has been pressed"),
            new Hint("u", "take the last press or word back"),
            new Hint("c", "call keys one by one; leave it"),
            new Hint("d", "the chosen finding is repaired"),
            new Hint("Tab PgDn", "next finding; scroll it"),
            new Hint("f  a", "flex check; hold several at once"),
            new Hint("b  m", "bounce times; tones off or on"),
            new Hint("q", "quit; so does Ctrl-C"));

    private static final int STROKE_COLUMN = 38;

    private HelpPainter() {}

    static void paint(View view, Pen pen) {
        String title = "How a session goes";
        String log = view.setting().log().map(path -> "Log: " + path).orElse("");
        boolean fits = pen.width(title) + pen.width(log) + 8 <= pen.columns();
        Heading.paint(pen.row(0), fits ? title : log, fits ? log : "");
        int row = 1;
        for (String line : pen.wrap(String.join(" ", COURSE), pen.columns() - 2, 0)) {
            pen.put(1, row++, line, Ink.PLAIN);
        }
        row += pen.rows() - row > STROKES.size() + 3 ? 1 : 0;
        Pen table = pen.part(0, row, pen.columns(), pen.rows() - row);
        Pen left = table.part(0, 0, STROKE_COLUMN, table.rows());
        Heading.paint(left, "Marks", "");
        row = 1;
        for (KeyState state : KeyState.values()) {
            left.put(1, row, state.mark(pen.ascii()) + " " + state.word(), BoardPainter.ink(state));
            left.put(16, row++, meaning(state), Ink.PLAIN);
        }
        left.put(1, row + 1, "A double frame is the selected key,", Ink.PLAIN);
        left.put(1, row + 2, "or where the chosen finding is;", Ink.PLAIN);
        left.put(1, row + 3, BoardPainter.pointer(pen) + " is the key that is called.", Ink.PLAIN);
        Pen right = table.from(STROKE_COLUMN);
        Heading.paint(right, "Keystrokes", "");
        row = 1;
        for (Hint hint : STROKES) {
            right.put(1, row, hint.stroke(), Ink.STRONG);
            right.put(10, row++, hint.does(), Ink.PLAIN);
        }
        if (view.setting().simulated()) {
            right.put(1, row, "Enter p", Ink.STRONG);
            right.put(10, row, "press the key called, selected", Ink.PLAIN);
            right.put(1, row + 1, "R C", Ink.STRONG);
            right.put(10, row + 1, "touch its row or column joint", Ink.PLAIN);
        }
    }

    private static String meaning(KeyState state) {
        return switch (state) {
            case UNTESTED -> "not pressed yet";
            case GOOD -> "answered as planned";
            case SILENT -> "pressed, nothing came";
            case MISPLACED -> "answers as another key";
            case DOUBLED -> "answers with company";
            case REVERSED -> "only the wrong way";
            case TWO_WAY -> "conducts both ways";
            case HELD -> "conducts unpressed";
            case INTERMITTENT -> "comes and goes";
        };
    }
}
