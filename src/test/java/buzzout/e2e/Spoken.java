package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;

/** What a program without a terminal has said so far, and a way to answer it. */
final class Spoken implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final int LOOK_MILLIS = 20;

    private final Process process;
    private final StringBuffer said = new StringBuffer();
    private final Thread listener = new Thread(this::listen, "listener");

    Spoken(Process process) {
        this.process = process;
        listener.setDaemon(true);
        listener.start();
    }

    void type(String line) throws IOException {
        process.outputWriter(StandardCharsets.UTF_8).append(line).append('\n').flush();
    }

    void await(String words) throws InterruptedException {
        long deadline = System.nanoTime() + PATIENCE.toNanos();
        while (said.indexOf(words) < 0) {
            assertTrue(System.nanoTime() < deadline, () -> "waited in vain for: " + words + "\n" + said);
            Thread.sleep(LOOK_MILLIS);
        }
    }

    /** All that it said, once it has ended. */
    String all() throws InterruptedException {
        listener.join(PATIENCE.toMillis());
        return said.toString();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }

    private void listen() {
        try (BufferedReader reader = process.inputReader(StandardCharsets.UTF_8)) {
            for (int next = reader.read(); next >= 0; next = reader.read()) {
                said.append((char) next);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
