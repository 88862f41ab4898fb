package buzzout.screen;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.swing.SwingTerminalFontConfiguration;
import com.googlecode.lanterna.terminal.swing.SwingTerminalFrame;
import com.googlecode.lanterna.terminal.swing.TerminalEmulatorAutoCloseTrigger;
import com.googlecode.lanterna.terminal.swing.TerminalEmulatorColorConfiguration;
import com.googlecode.lanterna.terminal.swing.TerminalEmulatorDeviceConfiguration;
import java.awt.AWTError;
import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.Toolkit;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javax.swing.SwingUtilities;

/** A window of its own that takes what a terminal takes. Closing it quits. */
final class OwnWindow {
    private static final TerminalSize FIRST_SIZE = new TerminalSize(110, 34);
    private static final int FONT_POINTS = 16;

    private OwnWindow() {}

    /** Why no window can be opened here, as a sentence; nothing when one can. */
    static Optional<String> obstacle() {
        try {
            if (GraphicsEnvironment.isHeadless()) {
                return Optional.of("There is no display to open a window on.");
            }
            Toolkit.getDefaultToolkit();
            GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice();
            return Optional.empty();
        } catch (HeadlessException | AWTError e) {
            return Optional.of("The display does not let a window be opened: "
                    + Clean.text(String.valueOf(e.getMessage()), true).strip() + ".");
        } catch (LinkageError e) {
            return Optional.of("This Java was installed without its graphics; install the whole of it.");
        }
    }

    /** Whether a window is the usual place here: on Windows, whose consoles the screen cannot use. */
    static boolean isUsual() {
        return System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows")
                && obstacle().isEmpty();
    }

    /** Opens one, visible. */
    static SwingTerminalFrame open(String title) throws IOException {
        FutureTask<SwingTerminalFrame> opening = new FutureTask<>(() -> visible(title));
        SwingUtilities.invokeLater(opening);
        try {
            return opening.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while the window opened", e);
        } catch (ExecutionException e) {
            throw new IOException("the window does not open", e);
        }
    }

    private static SwingTerminalFrame visible(String title) {
        // The logical font borrows from others what it lacks, so that every mark is drawn.
        Font font = new Font(Font.MONOSPACED, Font.PLAIN, FONT_POINTS);
        SwingTerminalFrame frame = new SwingTerminalFrame(
                title,
                FIRST_SIZE,
                TerminalEmulatorDeviceConfiguration.getDefault(),
                SwingTerminalFontConfiguration.newInstance(font),
                TerminalEmulatorColorConfiguration.getDefault(),
                TerminalEmulatorAutoCloseTrigger.CloseOnExitPrivateMode);
        frame.setLocationByPlatform(true);
        frame.setVisible(true);
        return frame;
    }
}
