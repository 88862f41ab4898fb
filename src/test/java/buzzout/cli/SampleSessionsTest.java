package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.cli.CommandLineCase.Result;
import buzzout.plan.ExamplePlan;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The logs in {@code sessions/} are what its README says, and what the commands make of them is what they should. */
class SampleSessionsTest {
    private static final Path SAMPLES = Path.of("sessions");
    private static final String COMMAND = "    buzzout simulate ";
    private static final boolean WRITE = "write".equals(System.getProperty("buzzout.samples"));

    @TempDir
    static Path made;

    private CommandLineCase line;

    @BeforeAll
    static void make() throws IOException {
        Files.writeString(made.resolve("quayside-46.toml"), ExamplePlan.quaysideText());
        for (String command : commands()) {
            Result result = new CommandLineCase(made).run(command.split(" "));
            assertEquals(0, result.status(), result.err());
        }
        if (WRITE) {
            for (Path log : logs(made)) {
                Files.writeString(SAMPLES.resolve(log.getFileName()), Files.readString(log));
            }
        }
    }

    @BeforeEach
    void open() {
        line = new CommandLineCase(Path.of("").toAbsolutePath());
    }

    @TestFactory
    Stream<DynamicTest> a_sample_is_what_its_command_makes() throws IOException {
        List<Path> logs = logs(made);
        assertEquals(5, logs.size());
        return logs.stream()
                .map(log -> DynamicTest.dynamicTest(
                        log.getFileName().toString(),
                        () -> assertEquals(withoutVersion(log), withoutVersion(SAMPLES.resolve(log.getFileName())))));
    }

    @Test
    void the_retest_is_told_apart_from_the_first_test() {
        Result result = line.run("compare", "sessions/Q-03-first-test.jsonl", "sessions/Q-03-retest.jsonl");
        assertEquals("""
                Before: Quayside 46, unit Q-03, session of 2026-11-21 11:25: 3 findings: 33 of
                        46 keys good.
                After:  Quayside 46, unit Q-03, session of 2026-11-21 12:10: 2 findings: 44 of
                        46 keys good.

                Fixed:  C2 and C3 are bridged between A and S (or what looks alike).
                Fixed:  R3 is open between M and ",".
                Left:   The diode of O sits the wrong way round.
                Broken: P never conducts: its switch, its diode or one of their joints is open.

                Keys fixed: Q  W  A  S  Z  X  ,  .  /  Up  Log  Band
                Keys left:  O ◄
                Keys broken: P ○
                """, result.out());
        assertEquals("", result.err());
        assertEquals(1, result.status());
    }

    @Test
    void compared_as_json_it_says_the_same() {
        Result result = line.run("compare", "sessions/Q-03-first-test.jsonl", "sessions/Q-03-retest.jsonl", "--json");
        JsonObject json = JsonParser.parseString(result.out()).getAsJsonObject();
        assertEquals("buzzout-comparison", json.get("format").getAsString());
        assertEquals(2, json.getAsJsonArray("fixed").size());
        assertEquals(
                "[{\"code\":\"reversed:O\",\"says\":\"the diode of O sits the wrong way round\",\"settled\":true}]",
                json.get("left").toString());
        assertEquals(14, json.getAsJsonArray("keys").size());
        assertEquals("[]", json.get("remarks").toString());
    }

    @Test
    void the_batch_shows_where_each_unit_stands() {
        Result result = line.run("history", made.toString());
        assertEquals("""
                Quayside 46: 3 units tested, 2 passed, 1 of them at first try, 1 open.
                  Q-01  passed at first try; 1 session; last 2026-11-21 10:05
                  Q-02  open, 2 findings, 5 keys not good; 1 session; last 2026-11-21 10:40
                        - R3 is open between M and ","
                        - J never conducts: its switch, its diode or one of their joints is open
                  Q-03  passed; 3 sessions; last 2026-11-21 12:35
                        - C2 and C3 are bridged between A and S (or what looks alike)
                        - R3 is open between M and ","
                        - the diode of O sits the wrong way round
                        - P never conducts: its switch, its diode or one of their joints is open

                Faults by kind: open 2, dead 2, reversed 1, bridge 1

                Failing again
                  2 times: R3 is open between M and ","; Q-02, Q-03
                """, result.out());
        assertEquals(0, result.status());
    }

    @Test
    void the_batch_proposes_priors_which_a_plan_takes() throws IOException {
        String toml = line.run("history", made.toString(), "--priors").out();
        assertTrue(toml.contains("\n[priors]\n"), toml);
        assertTrue(toml.matches("(?s).*\nreversed = 0\\.00313 +# 1 found in 138; judged 0\\.002; .*"), toml);
        Files.writeString(made.resolve("counted.toml"), ExamplePlan.quaysideText() + "\n" + toml);
        Result check = new CommandLineCase(made).run("check", "counted.toml");
        assertEquals("", check.err());
        assertEquals(0, check.status());
    }

    private static List<String> commands() throws IOException {
        return Files.readString(SAMPLES.resolve("README.md"))
                .lines()
                .filter(each -> each.startsWith(COMMAND))
                .map(each -> each.strip().substring("buzzout ".length()))
                .toList();
    }

    private static List<Path> logs(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".jsonl"))
                    .sorted()
                    .toList();
        }
    }

    private static String withoutVersion(Path log) throws IOException {
        return Files.readString(log).replaceFirst("\"program\":\"[^\"]*\",", "");
    }
}
