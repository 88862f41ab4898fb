package buzzout.screen;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.ansi.UnixTerminal;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * The terminal that the program was started in.
 *
 * <p>Lanterna's own asks the terminal for its size and waits seconds for an answer when its output is buffered, and
 * unbuffered output takes a thousand times the writes; so the output is buffered, and the size comes from {@code stty}.
 */
final class OwnTerminal extends UnixTerminal {
    private static final int OUTPUT_BYTES = 64 * 1024;
    private static final TerminalSize UNKNOWN_SIZE = new TerminalSize(80, 24);

    private static final String USUAL_SETTINGS = "sane";

    /** How {@code stty} found the terminal. */
    private final @Nullable String asFound;

    /** What {@code stty} said of the size when it made the terminal ready, until that changes. */
    private volatile @Nullable String sizeAtFirst;

    OwnTerminal(Opening opening) throws IOException {
        this(opening.asFound());
    }

    private OwnTerminal(String asFound) throws IOException {
        super(
                new FileInputStream(FileDescriptor.in),
                new BufferedOutputStream(new FileOutputStream(FileDescriptor.out), OUTPUT_BYTES),
                StandardCharsets.UTF_8,
                CtrlCBehaviour.TRAP);
        this.asFound = asFound;
    }

    /** That has been done. */
    @Override
    protected void saveTerminalSettings() {}

    /** A program that ends while the superclass is made has the terminal raw already, and this field not yet. */
    @Override
    protected void restoreTerminalSettings() throws IOException {
        Stty.run(asFound == null || asFound.isEmpty() ? USUAL_SETTINGS : asFound);
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
        try {
            String known = sizeAtFirst;
            String said = known == null ? Stty.run("size") : known;
            String[] size = said.trim().split(" ", -1);
            int rows = Integer.parseInt(size[0]);
            int columns = Integer.parseInt(size[1]);
            return rows > 0 && columns > 0 ? new TerminalSize(columns, rows) : UNKNOWN_SIZE;
        } catch (IOException | NumberFormatException | ArrayIndexOutOfBoundsException e) {
            return UNKNOWN_SIZE;
        }
    }

    @Override
    protected void registerTerminalResizeListener(Runnable onResize) throws IOException {
        super.registerTerminalResizeListener(() -> {
            sizeAtFirst = null;
            onResize.run();
        });
    }

    /** Cleared first: when tmux has been made larger meanwhile, it brings part of what was drawn back to the shell. */
    @Override
    public void exitPrivateMode() throws IOException {
        clearScreen();
        super.exitPrivateMode();
    }

    /** With the signals below: each {@code stty} is a process, and a start waits for it. */
    @Override
    protected void canonicalMode(boolean enabled) {}

    /** With the signals below. */
    @Override
    protected void keyEchoEnabled(boolean enabled) {}

    /**
     * All is restored with what {@code stty} saved at first, so there is nothing to do to enable it. The
     * superclass calls this before a field of this class could be given a first value.
     */
    @Override
    protected void keyStrokeSignalsEnabled(boolean enabled) throws IOException {
        if (!enabled) {
            sizeAtFirst = Stty.run("-icanon", "min", "1", "-echo", "-isig", "-ixon", "-iexten", "size");
        }
    }
}
