package buzzout.screen;

import com.googlecode.lanterna.TerminalSize;
import java.util.Arrays;

/** A page of cells, blank at first. */
final class Sheet {
    private static final Ink[] INKS = Ink.values();

    /** The right half of a character that takes two cells. No character is written so. */
    private static final char COVERED = 0xFFFF;

    private final TerminalSize size;
    private final int columns;

    /** An ink and a character each, so that a plain blank is zero. */
    private final int[] cells;

    Sheet(TerminalSize size) {
        this.size = size;
        columns = size.getColumns();
        cells = new int[columns * size.getRows()];
    }

    TerminalSize size() {
        return size;
    }

    int columns() {
        return columns;
    }

    int rows() {
        return size.getRows();
    }

    /** All of the character must lie on the sheet. Of another that loses one of its two cells, nothing stays. */
    void put(int column, int row, char character, Ink ink) {
        int at = row * columns + column;
        if (isCovered(column, row)) {
            cells[at - 1] = 0;
        }
        int width = Width.of(character);
        if (column + width < columns && isCovered(column + width, row)) {
            cells[at + width] = 0;
        }
        cells[at] = cell(character, ink);
        if (width > 1) {
            cells[at + 1] = cell(COVERED, ink);
        }
    }

    @SuppressWarnings("EnumOrdinal") // No sheet outlives the program.
    private static int cell(char character, Ink ink) {
        return (ink.ordinal() << Character.SIZE) | (character ^ ' ');
    }

    /** What begins in this cell; a blank in one that is covered. */
    char character(int column, int row) {
        return isCovered(column, row) ? ' ' : (char) (cells[row * columns + column] ^ ' ');
    }

    Ink ink(int column, int row) {
        return INKS[cells[row * columns + column] >>> Character.SIZE];
    }

    /** Whether a character that takes two cells reaches into this one. */
    boolean isCovered(int column, int row) {
        return (char) (cells[row * columns + column] ^ ' ') == COVERED;
    }

    /** Whether another sheet of the same size is the same throughout. */
    boolean isSameAs(Sheet other) {
        return Arrays.equals(cells, other.cells);
    }

    /** Whether a whole row is the same on another sheet of the same size. */
    boolean hasRow(int row, Sheet other) {
        int from = row * columns;
        return Arrays.equals(cells, from, from + columns, other.cells, from, from + columns);
    }

    /** Whether a cell is the same on another sheet of the same size. */
    boolean hasCell(int column, int row, Sheet other) {
        int at = row * columns + column;
        return cells[at] == other.cells[at];
    }

    /** Its characters, a line for each row, without trailing blanks. */
    String text() {
        StringBuilder text = new StringBuilder();
        for (int row = 0; row < rows(); row++) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < columns; column++) {
                if (!isCovered(column, row)) {
                    line.append(character(column, row));
                }
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }
}
