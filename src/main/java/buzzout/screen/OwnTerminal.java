package buzzout.screen;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.ansi.ANSITerminal;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/**
 * The terminal that the program was started in.
 *
 * <p>Lanterna's own asks the terminal for its size and waits seconds for an answer when its output is buffered, and
 * unbuffered output takes a thousand times the writes; so the output is buffered, and the size comes from {@code stty}.
 */
final class OwnTerminal extends ANSITerminal {
    private static final int OUTPUT_BYTES = 64 * 1024;
    private static final TerminalSize UNKNOWN_SIZE = new TerminalSize(80, 24);

    private static final String USUAL_SETTINGS = "sane";

    /** How {@code stty} found the terminal. */
    private final String asFound;

    private final Thread atExit = new Thread(this::leaveQuietly, "terminal");
    private volatile boolean isSizeKnown;
    private TerminalSize size = UNKNOWN_SIZE;

    private boolean isTaken;

    private OwnTerminal(String asFound) {
        super(
                new FileInputStream(FileDescriptor.in),
                new BufferedOutputStream(new FileOutputStream(FileDescriptor.out), OUTPUT_BYTES),
                StandardCharsets.UTF_8);
        this.asFound = asFound;
    }

    /** Nothing that is typed is shown, waits for the end of its line, or ends the program. */
    static OwnTerminal open(Opening opening) throws IOException {
        OwnTerminal terminal = new OwnTerminal(opening.asFound());
        Runtime.getRuntime().addShutdownHook(terminal.atExit);
        Signals.whenResized(() -> terminal.isSizeKnown = false);
        terminal.isSizeKnown = true;
        terminal.size = size(Stty.run("-icanon", "min", "1", "-echo", "-isig", "-ixon", "-iexten", "size"));
        return terminal;
    }

    /** The same as Lanterna's, whose table of colours takes a thirtieth of the first frame to load. */
    void writeIn(Hue hue) throws IOException {
        writeToTerminal(("\033[" + hue.code() + "m").getBytes(StandardCharsets.UTF_8));
    }

    /** At once: Lanterna makes an encoder for each character. */
    @Override
    public void putString(String text) throws IOException {
        for (int at = 0; at < text.length(); at++) {
            if (Character.isISOControl(text.charAt(at))) {
                super.putString(text);
                return;
            }
        }
        writeToTerminal(text.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    protected TerminalSize findTerminalSize() {
        if (!isSizeKnown) {
            // Before it is asked for: it may change meanwhile.
            isSizeKnown = true;
            try {
                size = size(Stty.run("size"));
            } catch (IOException e) {
                size = UNKNOWN_SIZE;
            }
        }
        return size;
    }

    /** From what {@code stty} says: rows, then columns. */
    private static TerminalSize size(String said) {
        String[] both = said.split(" ", -1);
        try {
            int rows = Integer.parseInt(both[0]);
            int columns = Integer.parseInt(both[1]);
            return rows > 0 && columns > 0 ? new TerminalSize(columns, rows) : UNKNOWN_SIZE;
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
            return UNKNOWN_SIZE;
        }
    }

    @Override
    public synchronized void enterPrivateMode() throws IOException {
        isTaken = true;
        super.enterPrivateMode();
    }

    /** Cleared first: when tmux has been made larger meanwhile, it brings part of what was drawn back to the shell. */
    @Override
    public synchronized void exitPrivateMode() throws IOException {
        isTaken = false;
        clearScreen();
        super.exitPrivateMode();
    }

    @Override
    public void close() throws IOException {
        leave();
        try {
            Runtime.getRuntime().removeShutdownHook(atExit);
        } catch (IllegalStateException e) {
            // The program is ending already, and that thread runs.
        }
    }

    private synchronized void leave() throws IOException {
        try {
            if (isTaken) {
                exitPrivateMode();
            }
        } finally {
            Stty.run(asFound.isEmpty() ? USUAL_SETTINGS : asFound);
        }
    }

    private void leaveQuietly() {
        try {
            leave();
        } catch (IOException e) {
            // It is gone.
        }
    }
}
