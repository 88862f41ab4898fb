package buzzout.screen;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import java.util.Optional;

/**
 * A terminal and the sheet that it shows; only what differs is written. Lanterna's own screen takes four times as long
 * for a frame.
 */
final class Paper implements AutoCloseable {
    /** To be sent to another cell takes about as many characters as to write those in between once more. */
    private static final int FAR = 8;

    private final Terminal terminal;
    private final boolean colours;
    private Sheet shown;
    private Ink dipped = Ink.PLAIN;

    private Paper(Terminal terminal, boolean colours, Sheet shown) {
        this.terminal = terminal;
        this.colours = colours;
        this.shown = shown;
    }

    /** Takes the terminal over, until closed. */
    static Paper on(Terminal terminal, boolean colours) throws IOException {
        terminal.enterPrivateMode();
        Paper paper = new Paper(terminal, colours, new Sheet(terminal.getTerminalSize()));
        paper.wipe();
        return paper;
    }

    TerminalSize size() {
        return shown.size();
    }

    /** Whether the terminal has another size than before; it is blank then. */
    boolean isResized() throws IOException {
        TerminalSize size = terminal.getTerminalSize();
        if (size.equals(shown.size())) {
            return false;
        }
        shown = new Sheet(size);
        wipe();
        return true;
    }

    /** Whatever else has written on the terminal goes, with the next sheet. */
    void clear() throws IOException {
        shown = new Sheet(shown.size());
        wipe();
    }

    private void wipe() throws IOException {
        dip(Ink.PLAIN);
        terminal.setCursorVisible(false);
        terminal.clearScreen();
    }

    /** The next keystroke, if there is one; at the end of all input, that. */
    Optional<KeyStroke> stroke() throws IOException {
        return Optional.ofNullable(terminal.pollInput());
    }

    /** Shows a sheet of this size. */
    void show(Sheet sheet) throws IOException {
        if (sheet.isSameAs(shown)) {
            return;
        }
        // Whoever wrote on the terminal meanwhile may have left an ink of its own.
        dip(Ink.PLAIN);
        for (int row = 0; row < sheet.rows(); row++) {
            if (!sheet.hasRow(row, shown)) {
                writeRow(sheet, row);
            }
        }
        shown = sheet;
        terminal.flush();
    }

    private void writeRow(Sheet sheet, int row) throws IOException {
        boolean isThere = false;
        for (int column = 0; column < sheet.columns(); ) {
            if (sheet.hasCell(column, row, shown)) {
                column++;
                isThere = false;
                continue;
            }
            if (!isThere) {
                terminal.setCursorPosition(column, row);
                isThere = true;
            }
            int end = end(sheet, column, row);
            writeCells(sheet, row, column, end);
            column = end;
        }
    }

    /** Where what is written in one go from here on ends: with the last cell that differs, before another ink or far. */
    private int end(Sheet sheet, int from, int row) {
        int end = from + 1;
        for (int column = end; column < sheet.columns() && column - end < FAR; column++) {
            if (sheet.ink(column, row) != sheet.ink(from, row)) {
                break;
            }
            end = sheet.hasCell(column, row, shown) ? end : column + 1;
        }
        return end;
    }

    private void writeCells(Sheet sheet, int row, int from, int end) throws IOException {
        StringBuilder text = new StringBuilder();
        for (int column = from; column < end; column++) {
            if (!sheet.isCovered(column, row)) {
                text.append(sheet.character(column, row));
            }
        }
        if (sheet.ink(from, row) != dipped) {
            dip(sheet.ink(from, row));
        }
        terminal.putString(text.toString());
    }

    private void dip(Ink ink) throws IOException {
        dipped = ink;
        terminal.resetColorAndSGR();
        if (ink.bold()) {
            terminal.enableSGR(SGR.BOLD);
        }
        if (ink.reverse()) {
            terminal.enableSGR(SGR.REVERSE);
        }
        if (colours && ink.hue() != Hue.OWN) {
            colour(ink.hue());
        }
    }

    private void colour(Hue hue) throws IOException {
        if (terminal instanceof OwnTerminal own) {
            own.writeIn(hue);
        } else {
            terminal.setForegroundColor(hue.shade());
        }
    }

    /** What was typed and not read is forgotten, and what stood on the terminal before comes back. */
    @Override
    public void close() throws IOException {
        KeyStroke unread;
        do {
            unread = terminal.pollInput();
        } while (unread != null && unread.getKeyType() != KeyType.EOF);
        terminal.exitPrivateMode();
    }
}
