package buzzout.screen;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.graphics.TextGraphics;
import java.util.Arrays;

/** A page while it is being written; only what differs from the paper goes on it in the end. */
final class Sheet {
    private final int columns;
    private final int rows;
    private final Glyph[] cells;

    Sheet(TerminalSize size) {
        columns = size.getColumns();
        rows = size.getRows();
        cells = new Glyph[columns * rows];
        Arrays.fill(cells, Glyph.BLANK);
    }

    int columns() {
        return columns;
    }

    int rows() {
        return rows;
    }

    /** All of the glyph must lie on the sheet. Of another that loses one of its two cells, nothing stays. */
    void put(int column, int row, Glyph glyph) {
        int at = row * columns + column;
        if (isCovered(column, at)) {
            cells[at - 1] = Glyph.BLANK;
        }
        cells[at] = glyph;
        if (glyph.isDoubleWidth()) {
            cells[at + 1] = Glyph.BLANK;
        }
    }

    /** Whether a character that takes two cells reaches into this one. */
    private boolean isCovered(int column, int at) {
        return column > 0 && cells[at - 1].isDoubleWidth();
    }

    /** Says whether anything differed. */
    boolean onto(TextGraphics paper) {
        boolean changed = false;
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                int at = row * columns + column;
                if (!isCovered(column, at) && isOther(cells[at].onPaper(), paper.getCharacter(column, row))) {
                    paper.setCharacter(column, row, cells[at].onPaper());
                    changed = true;
                }
            }
        }
        return changed;
    }

    /** Most often it is compared with itself. */
    @SuppressWarnings("ReferenceEquality")
    private static boolean isOther(TextCharacter now, TextCharacter before) {
        return now != before && !now.equals(before);
    }
}
