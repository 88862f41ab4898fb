package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** A terminal of its own, in which a shell runs one command and notes the terminal's settings before and after. */
final class Tmux implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final int LOOK_MILLIS = 50;

    private final Path folder;
    private final String socket;

    private Tmux(Path folder) {
        this.folder = folder;
        this.socket = folder.resolve("tmux.sock").toString();
    }

    /** Runs a command in a folder; it must hold nothing of an earlier terminal. */
    static Tmux running(Path folder, int columns, int rows, List<String> command) throws IOException {
        Tmux tmux = new Tmux(folder);
        String quoted = command.stream()
                .map(word -> "'" + word.replace("'", "'\\''") + "'")
                .collect(Collectors.joining(" "));
        String script =
                "stty -a > before; " + quoted + "; echo left with $?; stty -a > after; touch done; exec sleep 600";
        for (String trace : List.of("before", "after", "done")) {
            Files.deleteIfExists(folder.resolve(trace));
        }
        tmux.say(
                "-f",
                "/dev/null",
                "-u",
                "new-session",
                "-d",
                "-x",
                String.valueOf(columns),
                "-y",
                String.valueOf(rows),
                "-c",
                folder.toString(),
                "sh",
                "-c",
                script);
        return tmux;
    }

    /** What stands on the screen now. */
    String screen() throws IOException {
        return say("capture-pane", "-p");
    }

    /** The same with each line's end and every run of blanks as one blank, so that wrapped sentences are whole. */
    String text() throws IOException {
        return flat(screen());
    }

    /** All that stands on the screen and above it, lines that the terminal wrapped joined. */
    String history() throws IOException {
        return say("capture-pane", "-p", "-J", "-S", "-");
    }

    static String flat(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    void type(String... keys) throws IOException {
        List<String> words = new ArrayList<>(List.of("send-keys"));
        words.addAll(List.of(keys));
        say(words.toArray(String[]::new));
    }

    /** Waits until the screen's text holds these words. */
    void await(String words) throws IOException, InterruptedException {
        await(words, text -> text.contains(words));
    }

    void await(String what, Predicate<String> text) throws IOException, InterruptedException {
        long deadline = System.nanoTime() + PATIENCE.toNanos();
        while (!text.test(text())) {
            String last = screen();
            assertTrue(System.nanoTime() < deadline, () -> "waited in vain for: " + what + "\n" + last);
            Thread.sleep(LOOK_MILLIS);
        }
    }

    /** Waits until the command has ended, and requires its status and the terminal as it was before. */
    void awaitEnd(int status) throws IOException, InterruptedException {
        await("left with ", text -> Files.exists(folder.resolve("done")));
        assertTrue(text().endsWith("left with " + status), screen());
        assertEquals(Files.readString(folder.resolve("before")), Files.readString(folder.resolve("after")));
        assertEquals(
                "cursor 1, other screen 0",
                flat(say("display", "-p", "cursor #{cursor_flag}, other screen #{alternate_on}")));
    }

    @Override
    public void close() throws IOException {
        say("kill-server");
    }

    private String say(String... words) throws IOException {
        List<String> command = new ArrayList<>(List.of("tmux", "-S", socket));
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("LC_ALL", "C.UTF-8");
        builder.environment().remove("NO_COLOR");
        return new String(builder.start().getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
}
