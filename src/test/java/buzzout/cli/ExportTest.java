package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.cli.CommandLineCase.Result;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExportTest {
    @TempDir
    Path folder;

    private CommandLineCase line;

    @BeforeEach
    void open() throws IOException {
        line = CommandLineCase.in(folder);
    }

    @Test
    void a_session_marks_what_it_proved() {
        line.run("simulate", "quayside.toml", "--fault", "dead:Q", "--log", "s.jsonl");
        Result result = line.run("export", "quayside.toml", "--as", "json", "--proven", "s.jsonl");
        assertEquals(0, result.status(), result.err());
        JsonObject document = JsonParser.parseString(result.out()).getAsJsonObject();
        assertEquals(
                "{\"log\":\"s.jsonl\",\"unit\":null,\"started\":null,\"verdict\":\"faulty\"}",
                document.get("proof").toString());
        assertEquals(45, result.out().split("\"state\": \"good\"", -1).length - 1);
        assertEquals(16, result.out().split("\"proven\": true", -1).length - 1);
    }

    @Test
    void nothing_is_overwritten_without_force_and_no_part_is_left() throws IOException {
        assertEquals(
                "Wrote pins.csv: as planned; no session was given that proves it.\n",
                line.run("export", "quayside.toml", "--as", "csv", "-o", "pins.csv")
                        .out());
        String first = Files.readString(folder.resolve("pins.csv"));
        Result again = line.run("export", "quayside.toml", "--as", "json", "-o", "pins.csv");
        assertEquals(2, again.status());
        assertEquals(
                "pins.csv: there is a file of that name; choose another, or overwrite it with --force.\n", again.err());
        assertEquals(first, Files.readString(folder.resolve("pins.csv")));
        assertEquals(
                0,
                line.run("export", "quayside.toml", "--as", "json", "-o", "pins.csv", "--force")
                        .status());
        assertTrue(Files.readString(folder.resolve("pins.csv")).startsWith("{"));
        try (var files = Files.list(folder)) {
            assertEquals(2, files.count());
        }
    }

    @Test
    void a_session_of_another_board_proves_nothing() throws IOException {
        Files.writeString(folder.resolve("new.toml"), line.run("new", "2x2").out());
        line.run("simulate", "quayside.toml", "--log", "s.jsonl");
        Result result = line.run("export", "new.toml", "--as", "c", "--proven", "s.jsonl");
        assertEquals("s.jsonl: this session does not prove new.toml: it knows no key \"1A\".\n", result.err());
        assertEquals(2, result.status());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "export quayside.toml --as xml | There is no form \"xml\"; there are `csv`, `json` and `c`.",
                "export quayside.toml --as c -o . | .: this is a folder; name a file.",
                "export quayside.toml --as c -o no/x.h | no/x.h: there is no such folder; make it first.",
                "export none.toml --as c | none.toml: there is no such file; `buzzout new 4x12` writes a plan to start from.",
            })
    void bad_input_gets_one_sentence(String arguments, String sentence) {
        Result result = line.run(arguments.split(" ", -1));
        assertEquals(sentence + "\n", result.err());
        assertEquals(2, result.status());
    }
}
