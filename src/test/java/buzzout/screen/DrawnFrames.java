package buzzout.screen;

import buzzout.circuit.Circuit;
import buzzout.plan.Plan;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.ansi.ANSITerminal;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The frames of a session on a terminal that only counts what is written to it. */
public final class DrawnFrames {
    private final Counted written = new Counted();
    private final Paper paper;
    private final Sitting sitting;
    private View view;

    private static final class Counted extends OutputStream {
        private long bytes;

        @Override
        public void write(int any) {
            bytes++;
        }

        @Override
        public void write(byte[] any, int from, int count) {
            bytes += count;
        }
    }

    private DrawnFrames(Plan plan, int columns, int rows) throws IOException {
        sitting = new Sitting(plan, Circuit.of(plan)).found().quietCheckDone();
        view = View.of(
                new Setting(Optional.of("Q-01"), Optional.of("log.jsonl"), new Look(true, false), true),
                sitting.snapshot(),
                Focus.FIRST);
        paper = Paper.on(
                terminal(written, new TerminalSize(columns, rows)), view.look().colour());
    }

    /** One that nobody types at. */
    static ANSITerminal terminal(OutputStream written, TerminalSize size) {
        return new ANSITerminal(InputStream.nullInputStream(), written, StandardCharsets.UTF_8) {
            @Override
            protected TerminalSize findTerminalSize() {
                return size;
            }
        };
    }

    /** Of a board whose keys have all been pressed but the last. */
    public static DrawnFrames of(Plan plan, int columns, int rows) throws IOException {
        DrawnFrames frames = new DrawnFrames(plan, columns, rows);
        for (int key = 0; key < plan.keys().size() - 1; key++) {
            frames.sitting.press(key);
        }
        frames.show();
        frames.whole();
        return frames;
    }

    /** Another press, and the frame that shows it; returns how many bytes that took. */
    public long press(int key) throws IOException {
        sitting.press(key);
        show();
        return frame();
    }

    /** A frame in which every cell is written anew. */
    public long whole() throws IOException {
        long before = written.bytes;
        paper.clear();
        frame();
        return written.bytes - before;
    }

    /** A frame in which nothing has changed. */
    public long same() throws IOException {
        return frame();
    }

    private void show() {
        view = view.with(sitting.snapshot());
    }

    private long frame() throws IOException {
        long before = written.bytes;
        paper.show(Page.painted(view, paper.size()));
        return written.bytes - before;
    }
}
