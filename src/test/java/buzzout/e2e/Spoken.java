package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.regex.Pattern;

/** A program without a terminal: what it has said so far, and a way to answer it. */
final class Spoken implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final int LOOK_MILLIS = 20;

    private final Process process;
    private final Path said;

    private Spoken(Process process, Path said) {
        this.process = process;
        this.said = said;
    }

    /** Runs a command in a folder; all that it says goes to a file there. */
    static Spoken running(Path folder, List<String> command) throws IOException {
        Path said = folder.resolve("said.txt");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        builder.environment().put("LC_ALL", "C.UTF-8");
        return new Spoken(builder.start(), said);
    }

    void type(String line) throws IOException {
        process.outputWriter(StandardCharsets.UTF_8).append(line).append('\n').flush();
    }

    void await(String words) throws IOException, InterruptedException {
        await(words, 1);
    }

    /** Waits until it has said this so many times. */
    void await(String words, int times) throws IOException, InterruptedException {
        long deadline = System.nanoTime() + PATIENCE.toNanos();
        while (all().split(Pattern.quote(words), -1).length <= times) {
            String all = all();
            assertTrue(System.nanoTime() < deadline, () -> "waited in vain for: " + words + "\n" + all);
            Thread.sleep(LOOK_MILLIS);
        }
    }

    int status() throws InterruptedException {
        return process.waitFor();
    }

    String all() throws IOException {
        return Files.readString(said);
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
