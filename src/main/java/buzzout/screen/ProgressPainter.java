package buzzout.screen;

import buzzout.session.KeyState;
import java.util.ArrayList;
import java.util.List;

/** How far the board is, which is also the legend of the marks: each with its word and count. */
final class ProgressPainter {
    private static final int GAP = 2;

    private ProgressPainter() {}

    /** @param column where it begins; the row is its list's */
    private record Item(int column, String text, Ink ink) {}

    static int rows(View view, Pen pen) {
        return items(view, pen).size();
    }

    static void paint(View view, Pen pen) {
        List<List<Item>> rows = items(view, pen);
        for (int row = 0; row < rows.size(); row++) {
            for (Item item : rows.get(row)) {
                pen.put(item.column(), row, item.text(), item.ink());
            }
        }
    }

    private static List<List<Item>> items(View view, Pen pen) {
        List<List<Item>> rows = new ArrayList<>(List.of(new ArrayList<>()));
        int column = 1;
        for (KeyState state : List.of(KeyState.GOOD, KeyState.UNTESTED)) {
            column = add(view, pen, state, column, rows);
        }
        for (KeyState state : KeyState.values()) {
            if (state != KeyState.GOOD && state != KeyState.UNTESTED && view.count(state) > 0) {
                column = add(view, pen, state, column, rows);
            }
        }
        return rows;
    }

    private static int add(View view, Pen pen, KeyState state, int column, List<List<Item>> rows) {
        String all = state == KeyState.GOOD ? " of " + view.plan().keys().size() : "";
        String text = state.mark(pen.ascii()) + " " + view.count(state) + all + " " + state.word();
        int start = column;
        if (column > 1 && column + pen.width(text) + 1 > pen.columns()) {
            rows.add(new ArrayList<>());
            start = 1;
        }
        rows.get(rows.size() - 1).add(new Item(start, text, BoardPainter.ink(state)));
        return start + pen.width(text) + GAP;
    }
}
