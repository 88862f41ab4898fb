package buzzout.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/** A terminal with a program in it: a pty, which a few lines of Python join to this one, and what stands on it. */
final class PtyTerminal implements AutoCloseable {
    static final int COLUMNS = 200;
    static final int ROWS = 60;

    private static final String BRIDGE = """
            import fcntl, os, pty, select, signal, struct, sys, termios
            os.write(1, b"\\x05")
            child, host = pty.fork()
            if child == 0:
                size = struct.pack("HHHH", int(sys.argv[2]), int(sys.argv[1]), 0, 0)
                fcntl.ioctl(0, termios.TIOCSWINSZ, size)
                os.execvp(sys.argv[3], sys.argv[3:])
            def end(*any):
                os.kill(child, signal.SIGKILL)
                sys.exit()
            signal.signal(signal.SIGTERM, end)
            try:
                while True:
                    for ready in select.select([0, host], [], [])[0]:
                        data = os.read(ready, 65536)
                        if not data:
                            sys.exit()
                        os.write(host if ready == 0 else 1, data)
            except OSError:
                pass
            """;

    private final Process bridge;
    private final Glass glass = new Glass(COLUMNS, ROWS);
    private long bytes;
    private long changedAtNanos;
    private long begunAtNanos;

    private PtyTerminal(Process bridge) {
        this.bridge = bridge;
        Thread reading = new Thread(() -> read(bridge.getInputStream()), "terminal");
        reading.setDaemon(true);
        reading.start();
    }

    static PtyTerminal running(Path folder, Map<String, String> environment, List<String> command) throws IOException {
        List<String> words =
                new ArrayList<>(List.of("python3", "-c", BRIDGE, String.valueOf(COLUMNS), String.valueOf(ROWS)));
        words.addAll(command);
        ProcessBuilder builder =
                new ProcessBuilder(words).directory(folder.toFile()).redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment().putAll(Map.of("LC_ALL", "C.UTF-8", "TERM", "xterm-256color"));
        builder.environment().putAll(environment);
        return new PtyTerminal(builder.start());
    }

    /** Waits until it shows something, and returns when that was, in nanoseconds. */
    synchronized long await(String what, Predicate<Glass> shown) throws InterruptedException {
        long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        while (!shown.test(glass)) {
            long left = deadline - System.nanoTime();
            if (left <= 0) {
                throw new IllegalStateException("waited in vain for: " + what + "\n" + glass.text());
            }
            TimeUnit.NANOSECONDS.timedWait(this, left);
        }
        return changedAtNanos;
    }

    long await(String words) throws InterruptedException {
        return await(words, shown -> shown.shows(words));
    }

    /** When the bridge was there and the program about to be started: it says so by a byte that no glass shows. */
    synchronized long begunAtNanos() {
        return begunAtNanos;
    }

    synchronized int rings() {
        return glass.rings();
    }

    synchronized long bytes() {
        return bytes;
    }

    private void read(InputStream from) {
        char[] buffer = new char[65_536];
        try (Reader reader = new InputStreamReader(from, StandardCharsets.UTF_8)) {
            for (int count = reader.read(buffer); count >= 0; count = reader.read(buffer)) {
                long now = System.nanoTime();
                String text = new String(buffer, 0, count);
                synchronized (this) {
                    begunAtNanos = changedAtNanos == 0 ? now : begunAtNanos;
                    changedAtNanos = now;
                    bytes += text.getBytes(StandardCharsets.UTF_8).length;
                    glass.take(text);
                    notifyAll();
                }
            }
        } catch (IOException ended) {
            // The program was ended.
        }
    }

    /** Ends the program outright. */
    @Override
    public void close() {
        bridge.destroy();
        try {
            bridge.waitFor(5, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
