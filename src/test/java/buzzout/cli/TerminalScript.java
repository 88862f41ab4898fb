package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A Java program of this build in a terminal of its own, to which one thing after another is done. */
final class TerminalScript {
    private static final Path SCRIPT = Path.of("src/test/resources/buzzout/cli/terminal.py");

    private TerminalScript() {}

    /**
     * What became of the program.
     *
     * @param changed which of the terminal's settings, cursor and screen are not as they were
     * @param after what was written after the screen was left
     */
    record Outcome(int status, String changed, String after) {}

    static void needsPython() {
        boolean there = isThere();
        assertTrue(there || System.getenv().getOrDefault("CI", "").isEmpty(), "python3 with its pty module is missing");
        assumeTrue(there, "python3 with its pty module makes the terminal");
    }

    private static boolean isThere() {
        try {
            return new ProcessBuilder("python3", "-c", "import pty").start().waitFor() == 0;
        } catch (IOException absent) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Runs a class in a folder; the steps are those of the script. */
    static Outcome play(Path folder, List<String> steps, String... classAndArguments)
            throws IOException, InterruptedException {
        List<String> command =
                new ArrayList<>(List.of("python3", SCRIPT.toAbsolutePath().toString()));
        command.addAll(steps);
        command.addAll(List.of(
                "--",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path")));
        command.addAll(List.of(classAndArguments));
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        JsonObject outcome = JsonParser.parseString(said).getAsJsonObject();
        return new Outcome(
                outcome.get("status").getAsInt(),
                outcome.get("changed").toString(),
                outcome.get("after").getAsString());
    }
}
