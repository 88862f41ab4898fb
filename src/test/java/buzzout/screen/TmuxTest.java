package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The screen in a real terminal: what it shows, and that it leaves the terminal as it was, however it ends. */
class TmuxTest {
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    @TempDir
    Path folder;

    private String socket = "";

    @BeforeAll
    static void tmux_is_needed() {
        boolean there = isThere();
        if (!System.getenv().getOrDefault("CI", "").isEmpty()) {
            assertTrue(there, "tmux is missing; the screen's test needs it");
        }
        Assumptions.assumeTrue(there, "tmux is not installed: the screen was not tried in a terminal");
    }

    private static boolean isThere() {
        try {
            return new ProcessBuilder("tmux", "-V").start().waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** A shell that notes the terminal's settings, runs the bench, notes them again, and waits. */
    @BeforeEach
    void start() {
        socket = folder.resolve("tmux.sock").toString();
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String script = "stty -a > before; '" + java + "' -XX:TieredStopAtLevel=1 -cp '"
                + System.getProperty("java.class.path") + "' buzzout.screen.Bench pid 2> errors;"
                + " echo left with $?; stty -a > after; touch done; exec sleep 60";
        tmux(
                "-f",
                "/dev/null",
                "-u",
                "new-session",
                "-d",
                "-x",
                "80",
                "-y",
                "24",
                "-c",
                folder.toString(),
                "sh",
                "-c",
                script);
        await("the board", () -> screen().contains("0 of 46 good"));
    }

    @AfterEach
    void stop() {
        tmux("kill-server");
    }

    @Test
    void keys_are_pressed_and_quitting_restores_the_terminal() throws IOException {
        assertEquals("0", tmux("display", "-p", "#{cursor_flag}").strip(), "the cursor is hidden meanwhile");
        tmux("send-keys", "Enter");
        await("Esc good", () -> screen().contains("║Esc ✓║"));
        tmux("send-keys", "Right", "p");
        await("Q good", () -> screen().contains("║Q   ✓║"));
        tmux("send-keys", "s");
        await("the solder side", () -> screen().contains("║Q   ✓║Esc ✓│"));
        tmux("send-keys", "?");
        await("the help", () -> screen().contains("How a session goes"));
        tmux("send-keys", "Escape");
        await("the board again", () -> screen().contains("║Q   ✓║Esc ✓│"));
        tmux("send-keys", "q");
        assertRestored("Quit[]", 0);
    }

    @Test
    void resizing_draws_anew() throws IOException {
        tmux("resize-window", "-x", "60", "-y", "20");
        await("too small", () -> screen().contains("Make it larger"));
        tmux("resize-window", "-x", "200", "-y", "60");
        await("the large board", () -> screen().contains("║       untested║") && screen().contains("? help"));
        assertEquals(60, screen().lines().count());
        tmux("resize-window", "-x", "80", "-y", "24");
        await("the small board", () -> screen().contains("║Esc ·║"));
        tmux("send-keys", "C-c");
        assertRestored("Quit[]", 0);
    }

    /** tmux 3.3a brings part of the drawing back to a shell that was made larger meanwhile, unless it was wiped. */
    @Test
    void the_drawing_is_wiped_before_it_is_left() throws IOException {
        Path sent = folder.resolve("sent");
        tmux("pipe-pane", "cat > '" + sent + "'");
        tmux("send-keys", "q");
        assertRestored("Quit[]", 0);
        await("the pipe", () -> sentText(sent).contains("left with"));
        assertTrue(sentText(sent).matches("(?s).*\u001b\\[2J.*\u001b\\[\\?1049l.*"), sentText(sent));
    }

    private static String sentText(Path sent) {
        try {
            return Files.readString(sent);
        } catch (IOException e) {
            return "";
        }
    }

    @Test
    void a_signal_restores_the_terminal() throws IOException {
        long pid = Long.parseLong(Files.readString(folder.resolve("pid")));
        assertTrue(ProcessHandle.of(pid).orElseThrow().destroy());
        assertRestored("Signalled[number=15]", 0);
    }

    @Test
    void the_programs_own_trouble_restores_the_terminal_before_it_is_told() throws IOException {
        tmux("send-keys", "u");
        assertRestored("left with 1", 1);
        String errors = Files.readString(folder.resolve("errors"));
        assertTrue(errors.contains("IllegalStateException: the program's own trouble"), errors);
    }

    private void assertRestored(String said, int status) throws IOException {
        await("the end", () -> Files.exists(folder.resolve("done")));
        String screen = screen();
        assertTrue(screen.contains(said), screen);
        assertTrue(screen.contains("left with " + status), screen);
        assertEquals(settings("before"), settings("after"));
        assertEquals(
                "cursor 1, other screen 0",
                tmux("display", "-p", "cursor #{cursor_flag}, other screen #{alternate_on}")
                        .strip());
    }

    /** All that {@code stty -a} said, but for the size. */
    private String settings(String when) throws IOException {
        String said = Files.readString(folder.resolve(when));
        assertTrue(said.contains("icanon"), said);
        return said.replaceFirst("rows \\d+; columns \\d+;", "");
    }

    private String screen() {
        return tmux("capture-pane", "-p");
    }

    private String tmux(String... arguments) {
        List<String> command = new ArrayList<>(List.of("tmux", "-S", socket));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().putAll(Map.of("LC_ALL", "C.UTF-8", "NO_COLOR", ""));
        try {
            Process process = builder.start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            process.waitFor();
            return said;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private void await(String what, BooleanSupplier holds) {
        long deadline = System.nanoTime() + PATIENCE.toNanos();
        while (!holds.getAsBoolean()) {
            assertTrue(System.nanoTime() < deadline, () -> "waited in vain for " + what + ":\n" + screen());
            try {
                Thread.sleep(50);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(e);
            }
        }
    }
}
