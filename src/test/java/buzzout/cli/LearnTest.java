package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.cli.CommandLineCase.Result;
import buzzout.plan.ExamplePlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LearnTest {
    @TempDir
    Path folder;

    private CommandLineCase line;

    @BeforeEach
    void open() throws IOException {
        line = CommandLineCase.in(folder);
    }

    @Test
    void a_log_of_swapped_leads_teaches_a_plan_that_explains_the_board() {
        simulate("swapped:C3:C4");
        Result result = line.run("learn", "s.jsonl", "-o", "new.toml");
        assertEquals("Wrote new.toml. With it the session has no finding.\n", result.out(), result.err());
        assertEquals(0, result.status());
        assertTrue(line.run("check", "new.toml", "--quiet").err().isEmpty());
    }

    @Test
    void accepting_keeps_everything_else_of_the_plans_text() throws IOException {
        simulate("swapped:C3:C4");
        Result result = line.run("learn", "s.jsonl", "--accept", "-o", "new.toml");
        assertEquals("""
                Wrote new.toml. With it the session has no finding.
                Taken for right: the leads of C3 and C4 are swapped at the controller.
                """, result.out(), result.err());
        assertEquals(
                ExamplePlan.quaysideText()
                        .replace("C3 = { pin = \"D4\"", "C3 = { pin = \"?\"")
                        .replace("C4 = { pin = \"D6\"", "C4 = { pin = \"D4\"")
                        .replace("C3 = { pin = \"?\"", "C3 = { pin = \"D6\""),
                Files.readString(folder.resolve("new.toml")));
    }

    @Test
    void a_mirrored_board_with_turned_stripes_can_be_accepted_too() throws IOException {
        simulate("mirrored", "turned");
        Result result = line.run("learn", "s.jsonl", "--accept", "-o", "new.toml");
        assertTrue(result.out().startsWith("Wrote new.toml. With it the session has no finding.\n"), result.toString());
        String text = Files.readString(folder.resolve("new.toml"));
        assertTrue(text.startsWith("stripe = \"column\"\n# The harbour radio club's keyboard"), text);
        assertTrue(text.contains("C1 = { pin = \"B3\", colour = \"brown\""), text);
        Result proven = line.run("export", "new.toml", "--as", "csv", "--proven", "s.jsonl");
        assertEquals(46, proven.out().split(",good\n", -1).length - 1);
    }

    @Test
    void what_is_missing_is_told_and_stands_in_the_plan() throws IOException {
        simulate("dead:Q", "swapped:C3:C4");
        Result result = line.run("learn", "s.jsonl", "-o", "new.toml");
        assertEquals(1, result.status());
        assertTrue(result.out().contains("Q was pressed and nothing came."), result.out());
        String text = Files.readString(folder.resolve("new.toml"));
        assertTrue(text.contains("\n# Q was pressed and nothing came.\n"), text);
    }

    @Test
    void nothing_is_overwritten_and_nothing_accepted_that_is_not_there() throws IOException {
        simulate("dead:Q");
        Files.writeString(folder.resolve("mine.toml"), "precious");
        Result result = line.run("learn", "s.jsonl", "-o", "mine.toml");
        assertEquals(
                "mine.toml: there is a file of that name; choose another, or overwrite it with --force.\n",
                result.err());
        assertEquals("precious", Files.readString(folder.resolve("mine.toml")));
        assertEquals(
                "s.jsonl: the session has no finding that could be accepted as wired: no swapped leads, no mirrored"
                        + " board, no turned stripes.\n",
                line.run("learn", "s.jsonl", "--accept", "-o", "new.toml").err());
    }

    @Test
    void a_log_without_called_keys_teaches_nothing() {
        line.run("simulate", "quayside.toml", "--free", "--log", "s.jsonl");
        Result result = line.run("learn", "s.jsonl");
        assertEquals(2, result.status());
        assertTrue(result.err().startsWith("s.jsonl: no key that was called joined two pins"), result.err());
    }

    private void simulate(String... faults) {
        List<String> arguments = new ArrayList<>(List.of("simulate", "quayside.toml", "--fault"));
        arguments.addAll(List.of(faults));
        arguments.addAll(List.of("--log", "s.jsonl"));
        Result result = line.run(arguments.toArray(String[]::new));
        assertEquals(0, result.status(), result.err());
    }
}
