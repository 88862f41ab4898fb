package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.cli.CommandLineCase.Result;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionCommandsTest {
    private static final String[] FAULTS = {"open:R3:M:,", "bridge:C2:C3:A:S", "reversed:O"};

    @TempDir
    Path folder;

    private CommandLineCase line;

    @BeforeEach
    void open() throws IOException {
        line = CommandLineCase.in(folder);
    }

    @Test
    void the_headless_demo_names_its_faults_and_its_log() throws IOException {
        Result demo = line.run("demo", "--headless");
        assertEquals(1, demo.status(), demo.err());
        assertTrue(demo.out().startsWith("Quayside 46, unit Q-03\n\n3 findings: "), demo.out());
        assertTrue(demo.out().contains("R3 is open between M and \",\""), demo.out());
        assertTrue(demo.out().contains("C2 and C3 are bridged between A and S"), demo.out());
        assertTrue(demo.out().contains("The diode of O sits the wrong way round"), demo.out());
        assertTrue(demo.out().contains("Unplug the board before you solder"), demo.out());
        String log = "sessions/quayside-46-Q-03-2026-11-25T11-14-05.jsonl";
        assertTrue(demo.out().endsWith("\nLog: " + log + "\n"), demo.out());
        assertEquals(List.of(Path.of(log).getFileName().toString()), line.sessions());
    }

    @Test
    void a_replayed_demo_comes_to_the_same_findings() throws IOException {
        Result demo = line.run("demo", "--headless");
        Result replay =
                line.run("replay", "--quiet", "sessions/" + line.sessions().get(0));
        assertEquals(1, replay.status());
        String heading = "Quayside 46, unit Q-03, session of 2026-11-25 11:14\n";
        assertEquals(
                demo.out().substring(0, demo.out().indexOf("\nLog: ")),
                replay.out().replace(heading, "Quayside 46, unit Q-03\n"));
    }

    @Test
    void without_a_terminal_the_demo_is_played_all_the_same() {
        Result demo = line.run("demo");
        assertEquals(1, demo.status());
        assertEquals("There is no terminal. The demo is played without a screen.\n", demo.err());
    }

    @Test
    void simulated_faults_are_diagnosed_as_what_they_are() {
        simulate("s.jsonl", "--no-color", FAULTS);
        Result diagnosed = line.run("diagnose", "s.jsonl", "--json");
        assertEquals(1, diagnosed.status());
        assertEquals(Set.of(FAULTS), leading(diagnosed.out()));
    }

    @Test
    void so_are_those_of_free_play() {
        simulate("s.jsonl", "--free", "dead:J", "bridge:C2:C3:A:S");
        assertEquals(
                Set.of("dead:J", "bridge:C2:C3:A:S"),
                leading(line.run("diagnose", "s.jsonl", "--json").out()));
    }

    @Test
    void the_same_seed_gives_the_same_log_and_another_seed_another() throws IOException {
        simulate("a.jsonl", "--seed=7", FAULTS);
        simulate("b.jsonl", "--seed=7", FAULTS);
        simulate("c.jsonl", "--seed=8", FAULTS);
        assertEquals(Files.readString(folder.resolve("a.jsonl")), Files.readString(folder.resolve("b.jsonl")));
        assertNotEquals(Files.readString(folder.resolve("a.jsonl")), Files.readString(folder.resolve("c.jsonl")));
    }

    @Test
    void a_good_board_gives_status_0() {
        assertEquals(
                0, line.run("simulate", "quayside.toml", "--log", "good.jsonl").status());
        Result result = line.run("diagnose", "good.jsonl");
        assertEquals("Quayside 46\n\nNothing is wrong: all 46 keys are good.\n", result.out());
        assertEquals(0, result.status());
    }

    @Test
    void many_logs_are_diagnosed_in_one_run_and_a_bad_one_does_not_stop_the_others() throws IOException {
        line.run("simulate", "quayside.toml", "--log", "good.jsonl");
        simulate("bad.jsonl", "--ascii", "dead:Q");
        Files.writeString(folder.resolve("torn.jsonl"), "{\"format\":\"buzz");
        Result result = line.run("diagnose", "good.jsonl", "torn.jsonl", "bad.jsonl", "--json");
        List<String> verdicts = new ArrayList<>();
        result.out()
                .lines()
                .forEach(document -> verdicts.add(json(document).get("verdict").getAsString()));
        assertEquals(List.of("good", "unreadable", "faulty"), verdicts);
        assertEquals(
                "torn.jsonl:1: the file ends in the middle of this line; nothing else can be read without the plan in"
                        + " this line\n",
                result.err());
        assertEquals(2, result.status());
        assertEquals(1, line.run("diagnose", "good.jsonl", "bad.jsonl").status());
        assertTrue(line.run("diagnose", "good.jsonl", "bad.jsonl").out().startsWith("Log good.jsonl\n"));
    }

    @Test
    void a_log_whose_last_line_is_torn_is_still_diagnosed() throws IOException {
        simulate("s.jsonl", "--ascii", "dead:Q");
        String whole = Files.readString(folder.resolve("s.jsonl"));
        Files.writeString(folder.resolve("cut.jsonl"), whole.substring(0, whole.length() - 9));
        Result result = line.run("diagnose", "cut.jsonl");
        assertEquals(1, result.status());
        assertTrue(result.err().contains("the file ends in the middle of this line; the line was left out"));
        assertEquals(line.run("diagnose", "s.jsonl").out(), result.out());
    }

    @Test
    void the_small_log_of_the_format_page_is_diagnosed() throws IOException {
        String page = line.run("format", "log").out();
        String example = page.substring(page.indexOf("## A small log"));
        StringBuilder log = new StringBuilder();
        example.lines()
                .filter(each -> each.startsWith("    {"))
                .forEach(each -> log.append(each.strip()).append('\n'));
        Files.writeString(folder.resolve("small.jsonl"), log.toString());
        Result result = line.run("diagnose", "small.jsonl", "--json");
        assertEquals("", result.err());
        assertEquals(1, result.status());
        JsonObject keys = json(result.out()).getAsJsonObject("keys");
        assertEquals("{\"A\":\"good\",\"B\":\"good\",\"C\":\"silent\",\"D\":\"untested\"}", keys.toString());
    }

    @Test
    void an_existing_log_is_never_overwritten() throws IOException {
        Files.writeString(folder.resolve("mine.jsonl"), "precious");
        Result result = line.run("simulate", "quayside.toml", "--log", "mine.jsonl");
        assertEquals(4, result.status());
        assertEquals(
                "Cannot write the session log mine.jsonl: there is a file of that name, and nothing is overwritten."
                        + " Choose another name with --log FILE.\n",
                result.err());
        assertEquals("precious", Files.readString(folder.resolve("mine.jsonl")));
    }

    @Test
    void two_sessions_of_the_same_second_get_two_logs() throws IOException {
        line.run("demo", "--headless", "--fault", "dead:Q");
        line.run("demo", "--headless", "--fault", "dead:W");
        assertEquals(2, line.sessions().size());
    }

    @Test
    void run_without_a_probe_says_what_to_try_and_gives_status_3() {
        Result result =
                line.runTyping("quit\n", "run", "quayside.toml", "--port", folder + "/none", "--log", "r.jsonl");
        assertEquals(3, result.status(), result.out());
        assertTrue(result.err().contains("Try another cable") || result.err().contains("bootloader"), result.err());
        assertTrue(Files.notExists(folder.resolve("r.jsonl")), "nothing was worth a log");
        assertEquals(-1, result.out().indexOf("Log: "), result.out());
    }

    private void simulate(String log, String option, String... faults) {
        List<String> arguments = new ArrayList<>(List.of("simulate", "quayside.toml", "--fault"));
        arguments.addAll(List.of(faults));
        arguments.addAll(List.of("--log", log, option));
        Result result = line.run(arguments.toArray(String[]::new));
        assertEquals(0, result.status(), result.err());
    }

    private static Set<String> leading(String document) {
        Set<String> codes = new TreeSet<>();
        json(document)
                .getAsJsonArray("findings")
                .forEach(finding -> codes.add(finding.getAsJsonObject()
                        .getAsJsonArray("suspects")
                        .get(0)
                        .getAsJsonObject()
                        .get("code")
                        .getAsString()));
        return codes;
    }

    private static JsonObject json(String document) {
        return JsonParser.parseString(document).getAsJsonObject();
    }
}
