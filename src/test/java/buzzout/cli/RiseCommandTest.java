package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.cli.CommandLineCase.Result;
import buzzout.e2e.Needs;
import buzzout.plan.ExamplePlan;
import buzzout.probe.SketchBench;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On the executed sketch. */
class RiseCommandTest {
    private static final String WHOLE = "\"event\":\"whole\"";

    @TempDir
    Path folder;

    private CommandLineCase line;

    @BeforeEach
    void open() throws IOException, InterruptedException {
        Needs.theSketchBench();
        line = CommandLineCase.in(folder);
        // The simulator's sketch talks over the other two.
        String plan = ExamplePlan.quaysideText().replace("\"D2\"", "\"B0\"").replace("\"D3\"", "\"B1\"");
        Files.writeString(folder.resolve("plan.toml"), plan);
    }

    @Test
    void a_lead_that_is_off_shows_as_the_one_hint() throws IOException {
        Result result = rise("", "--fault", "lead-off:C3");

        assertEquals(0, result.status(), result.err());
        assertEquals(1, result.out().split("Hint:", -1).length - 1, result.out());
        assertTrue(result.out().contains("Hint: column C3 rises in 0.4 µs"), result.out());
    }

    @Test
    void the_slowest_pin_makes_the_settle() throws IOException {
        Result result = rise("rise B0 20\n");

        assertEquals(0, result.status(), result.err());
        assertTrue(result.out().matches("(?s).*\nB0 .*  20\\.[01] µs\n.*"), result.out());
        assertTrue(result.out().matches("(?s).*waits 4[01] µs.*"), result.out());
    }

    @Test
    void a_pin_that_is_held_low_is_a_plain_line() throws IOException {
        Result result = rise("", "--fault", "pin-low:C3");

        assertEquals(0, result.status(), result.err());
        assertTrue(result.out().contains("does not rise: something holds it low"), result.out());
    }

    @Test
    void a_session_sees_no_ghost_of_a_slow_pin_once_it_has_measured() throws IOException {
        String slow = wiring() + "rise B0 30\n";
        try (SketchBench bench = SketchBench.wired(folder, slow)) {
            String port = bench.port().toString();
            assertTrue(firstState("--settle", "15", "--port", port).contains("{\"B1\":[\"B0\"]}"), "no ghost to see");
            assertTrue(firstState("--settle", "auto", "--port", port).contains("\"pairs\":{}"), "a ghost");
        }
    }

    @Test
    void without_a_probe_it_says_so() {
        Result result = line.run("rise", "plan.toml", "--port", "nowhere");

        assertEquals(3, result.status());
        assertEquals("", result.out());
        assertEquals(1, result.err().lines().count(), result.err());
    }

    /** What the log of a session holds of its first sweep; the session is left as soon as it is there. */
    private String firstState(String... options) throws IOException {
        Path log = folder.resolve(options[1] + ".jsonl");
        List<String> words = new ArrayList<>(List.of("run", "plan.toml", "--log", log.toString()));
        words.addAll(List.of(options));
        InputStream quit = new ByteArrayInputStream("quit\n".getBytes(StandardCharsets.UTF_8));
        line.runReading(new SequenceInputStream(new OnceItHolds(log, WHOLE), quit), words.toArray(String[]::new));
        return Files.readAllLines(log).stream()
                .filter(each -> each.contains(WHOLE))
                .findFirst()
                .orElse("");
    }

    /** Ends without a byte once a file holds a text. */
    private static final class OnceItHolds extends InputStream {
        private final Path file;
        private final String text;

        OnceItHolds(Path file, String text) {
            this.file = file;
            this.text = text;
        }

        @Override
        public int read() throws IOException {
            for (int looks = 0; looks < 200 && !Files.readString(file).contains(text); looks++) {
                LockSupport.parkNanos(100_000_000);
            }
            return -1;
        }

        @Override
        public int read(byte[] into, int from, int most) throws IOException {
            return read();
        }
    }

    /** With more lines in the wiring, and faults as words of a command line. */
    private Result rise(String more, String... faults) throws IOException {
        try (SketchBench bench = SketchBench.wired(folder, wiring(faults) + more)) {
            return line.run("rise", "plan.toml", "--port", bench.port().toString());
        }
    }

    private String wiring(String... faults) {
        List<String> words = new ArrayList<>(List.of("netlist", "plan.toml"));
        words.addAll(List.of(faults));
        return line.run(words.toArray(String[]::new)).out();
    }
}
