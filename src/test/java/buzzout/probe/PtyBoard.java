package buzzout.probe;

import buzzout.circuit.Fault;
import buzzout.plan.Key;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** A simulated board in real time behind a pty, which a few lines of Python join to this program. */
public final class PtyBoard implements Bench {
    private static final String BRIDGE = """
            import os, pty, select, sys, tty
            host, device = pty.openpty()
            tty.setraw(device)
            os.write(1, (os.ttyname(device) + "\\n").encode())
            while True:
                for ready in select.select([0, host], [], [])[0]:
                    data = os.read(ready, 4096)
                    if not data:
                        sys.exit()
                    os.write(host if ready == 0 else 1, data)
            """;

    private final SimulatedBoard board;
    private final Process bridge;
    private final String path;

    private PtyBoard(SimulatedBoard board, Process bridge, String path) {
        this.board = board;
        this.bridge = bridge;
        this.path = path;
    }

    public static boolean isPossible() {
        try {
            return new ProcessBuilder("python3", "-c", "import pty").start().waitFor() == 0;
        } catch (IOException absent) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    static PtyBoard with(Fault... faults) throws IOException {
        return of(SimulatedBoard.inRealTime(TestBoard.plan(), List.of(faults), 1), sent -> {});
    }

    /**
     * Puts a board behind a pty.
     *
     * @param sending hears of the bytes that are about to be written to it
     */
    public static PtyBoard of(SimulatedBoard board, Consumer<String> sending) throws IOException {
        ByteLink link = board.open().link();
        Process bridge = new ProcessBuilder("python3", "-c", BRIDGE)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String path = line(bridge.getInputStream());
        carry(() -> toBoard(bridge.getInputStream(), link));
        carry(() -> toPty(link, bridge.getOutputStream(), sending));
        return new PtyBoard(board, bridge, path);
    }

    public String path() {
        return path;
    }

    @Override
    public LinkSource source() {
        return new NamedPort(path, true);
    }

    @Override
    public void press(Key key) {
        board.press(key);
    }

    @Override
    public void release(Key key) {
        board.release(key);
    }

    @Override
    public void reset() {
        board.reset();
    }

    @Override
    public void close() {
        pull();
    }

    /** Takes the device away. */
    void pull() {
        board.unplug();
        bridge.destroy();
        try {
            bridge.waitFor(5, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private interface Carrying {
        void run() throws IOException;
    }

    private static void carry(Carrying carrying) {
        Thread thread = new Thread(() -> {
            try {
                carrying.run();
            } catch (IOException ended) {
                // The bench was closed.
            }
        });
        thread.setDaemon(true);
        thread.start();
    }

    private static void toBoard(InputStream from, ByteLink link) throws IOException {
        byte[] buffer = new byte[512];
        for (int count = from.read(buffer); count >= 0; count = from.read(buffer)) {
            link.write(Arrays.copyOf(buffer, count));
        }
    }

    private static void toPty(ByteLink link, OutputStream to, Consumer<String> sending) throws IOException {
        byte[] buffer = new byte[512];
        while (true) {
            int count = link.read(buffer, 1_000);
            sending.accept(new String(buffer, 0, count, StandardCharsets.US_ASCII));
            to.write(buffer, 0, count);
            to.flush();
        }
    }

    private static String line(InputStream from) throws IOException {
        StringBuilder line = new StringBuilder();
        for (int next = from.read(); next > '\n'; next = from.read()) {
            line.append((char) next);
        }
        return line.toString();
    }
}
