package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.cli.CommandLineCase.Result;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReportCommandTest {
    @TempDir
    Path folder;

    private CommandLineCase line;

    @BeforeEach
    void open() throws IOException {
        line = CommandLineCase.in(folder);
        line.run("simulate", "quayside.toml", "--fault", "dead:Q", "--unit", "Q-02", "--log", "q.jsonl");
    }

    @Test
    void a_page_is_written_whole_and_leaves_nothing_beside_it() throws IOException {
        Result result = line.run("report", "q.jsonl", "-o", "report.html");
        assertEquals("Wrote report.html.\n", result.out(), result.err());
        assertEquals(1, result.status());
        assertTrue(Files.readString(folder.resolve("report.html")).endsWith("</html>\n"));
        assertEquals(List.of("q.jsonl", "quayside.toml", "report.html"), files());
    }

    @Test
    void an_existing_file_is_replaced_only_with_force() throws IOException {
        Files.writeString(folder.resolve("report.html"), "precious");
        Result result = line.run("report", "q.jsonl", "-o", "report.html");
        assertEquals(
                "report.html: there is a file of that name; --force replaces it, or choose another name.\n",
                result.err());
        assertEquals(2, result.status());
        assertEquals("precious", Files.readString(folder.resolve("report.html")));
        assertEquals(
                1,
                line.run("report", "q.jsonl", "-o", "report.html", "--force", "--quiet")
                        .status());
        assertTrue(Files.readString(folder.resolve("report.html")).startsWith("<!DOCTYPE html>"));
        assertEquals(List.of("q.jsonl", "quayside.toml", "report.html"), files());
    }

    @Test
    void the_short_form_fits_a_message_and_names_the_versions() {
        Result result = line.run("report", "q.jsonl", "--text", "--ascii");
        assertEquals(1, result.status());
        assertTrue(result.out().startsWith("Quayside 46, unit Q-02\n\n1 finding: 45 of 46 keys good."), result.out());
        assertTrue(result.out().contains("Probe: ATmega32U4, sketch simulated"), result.out());
        assertTrue(result.out().endsWith("Program: Buzzout development\n"), result.out());
        assertTrue(result.out().lines().allMatch(each -> each.length() <= 80), result.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "report q.jsonl | Say where to write the page, such as -o report.html; --text prints the short form.",
                "report q.jsonl -o none/report.html | none/report.html: there is no such folder to write into.",
                "report q.jsonl -o . | .: this is a folder; name a file.",
                "report none.jsonl --text | none.jsonl: there is no such file",
                "compare q.jsonl none.jsonl | none.jsonl: there is no such file",
                "compare q.jsonl | AFTER is missing. `buzzout compare --help` shows what it takes.",
                "history | sessions: there is no such folder; `run PLAN --unit MARK` keeps its sessions there.",
                "history quayside.toml | sessions: there is no such folder; `run PLAN --unit MARK` keeps its sessions there.",
                "history q.jsonl --priors | q.jsonl: this is a session log, not a plan; name the folder that it is in.",
                "simulate quayside.toml --log x.jsonl --started noon | --started: \"noon\" is no time such as 2026-11-25T10:14:05+01:00. `buzzout simulate --help` shows what it takes.",
            })
    void bad_input_gets_one_sentence_and_status_2(String arguments, String sentence) throws IOException {
        List<String> before = files();
        Result result = line.run(arguments.split(" "));
        assertEquals(sentence + "\n", result.err());
        assertEquals("", result.out());
        assertEquals(2, result.status());
        assertEquals(before, files());
    }

    @Test
    void two_boards_are_not_compared() throws IOException {
        Files.writeString(
                folder.resolve("other.toml"),
                Files.readString(folder.resolve("quayside.toml")).replace("Quayside 46", "Other 46"));
        line.run("simulate", "other.toml", "--log", "o.jsonl");
        Result result = line.run("compare", "q.jsonl", "o.jsonl");
        assertEquals(
                "q.jsonl is a session of Quayside 46 and o.jsonl one of Other 46; compare two of the same board.\n",
                result.err());
        assertEquals(2, result.status());
    }

    @Test
    void a_log_that_cannot_be_read_does_not_hide_the_others() throws IOException {
        Files.writeString(folder.resolve("torn.jsonl"), "{\"format\":\"buzz");
        Result result = line.run("history", ".");
        assertTrue(result.out().startsWith("Quayside 46: 1 unit tested, 0 passed, "), result.out());
        assertTrue(result.err().contains("torn.jsonl:1: the file ends in the middle of this line"), result.err());
        assertEquals(2, result.status());
        assertTrue(line.run("history", ".", "--json").out().contains("\"problems\":[\"./torn.jsonl:1: "));
    }

    @Test
    void a_plan_shows_only_its_own_board() throws IOException {
        Files.writeString(
                folder.resolve("other.toml"),
                Files.readString(folder.resolve("quayside.toml")).replace("Quayside 46", "Other 46"));
        Files.createDirectory(folder.resolve("sessions"));
        line.run("simulate", "other.toml", "--unit", "O-1", "--log", "sessions/o.jsonl");
        line.run("simulate", "quayside.toml", "--unit", "Q-1", "--log", "sessions/q.jsonl");
        assertTrue(line.run("history").out().contains("Other 46: 1 unit tested, 1 passed"));
        String own = line.run("history", "other.toml").out();
        assertTrue(own.startsWith("Other 46: ") && !own.contains("Quayside"), own);
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
