package buzzout.screen;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import java.util.Optional;

/**
 * A terminal and the sheet that it shows; only what differs is written. Lanterna's own screen takes twice the time of a
 * frame, and several times that for the first one.
 */
final class Paper implements AutoCloseable {
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
        terminal.setCursorVisible(false);
        Paper paper = new Paper(terminal, colours, new Sheet(terminal.getTerminalSize()));
        paper.clear();
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
        clear();
        return true;
    }

    /** Whatever else has written on the terminal goes, with the next sheet. */
    void clear() throws IOException {
        terminal.resetColorAndSGR();
        terminal.clearScreen();
        shown = new Sheet(shown.size());
        dipped = Ink.PLAIN;
    }

    /** The next keystroke, if there is one; at the end of all input, that. */
    Optional<KeyStroke> stroke() throws IOException {
        return Optional.ofNullable(terminal.pollInput());
    }

    /** Shows a sheet of this size. */
    void show(Sheet sheet) throws IOException {
        boolean changed = false;
        for (int row = 0; row < sheet.rows(); row++) {
            if (!sheet.hasRow(row, shown)) {
                write(sheet, row);
                changed = true;
            }
        }
        shown = sheet;
        if (changed) {
            terminal.flush();
        }
    }

    private void write(Sheet sheet, int row) throws IOException {
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
            column = written(sheet, column, row);
        }
    }

    /** Writes what differs in one ink from here on; returns the column after it. */
    private int written(Sheet sheet, int from, int row) throws IOException {
        Ink ink = sheet.ink(from, row);
        StringBuilder text = new StringBuilder();
        int column = from;
        while (column < sheet.columns() && !sheet.hasCell(column, row, shown) && sheet.ink(column, row) == ink) {
            if (!sheet.isCovered(column, row)) {
                text.append(sheet.character(column, row));
            }
            column++;
        }
        if (ink != dipped) {
            dip(ink);
        }
        terminal.putString(text.toString());
        return column;
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
            write(ink.hue());
        }
    }

    private void write(Hue hue) throws IOException {
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
