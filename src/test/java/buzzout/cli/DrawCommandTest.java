package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.cli.CommandLineCase.Result;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrawCommandTest {
    @TempDir
    Path folder;

    private CommandLineCase line;

    @BeforeEach
    void open() throws IOException {
        line = CommandLineCase.in(folder);
    }

    @ParameterizedTest
    @CsvSource({"sheet.svg, <?xml", "sheet.html, <!DOCTYPE html>", "Sheet.PDF, %PDF-1.4"})
    void the_suffix_says_the_form(String file, String begins) throws IOException {
        Result result = line.run("draw", "quayside.toml", "-o", file);
        assertEquals(0, result.status(), result.err());
        assertEquals("Wrote " + file + ": both sides of Quayside 46, and the checklist.\n", result.out());
        assertTrue(written(file).startsWith(begins));
        assertEquals(
                "",
                line.run("draw", "quayside.toml", "-o", file, "--force", "--quiet")
                        .out());
    }

    @Test
    void a_file_is_kept_unless_forced() throws IOException {
        Files.writeString(folder.resolve("mine.svg"), "precious");
        Result result = line.run("draw", "quayside.toml", "-o", "mine.svg");
        assertEquals(2, result.status());
        assertEquals(
                "mine.svg: there is a file of that name; choose another, or overwrite it with --force.\n",
                result.err());
        assertEquals("precious", written("mine.svg"));
        assertEquals(
                0,
                line.run("draw", "quayside.toml", "-o", "mine.svg", "--force").status());
        assertTrue(written("mine.svg").startsWith("<?xml"));
    }

    @Test
    void nothing_is_left_behind_when_the_plan_is_bad() throws IOException {
        Files.writeString(folder.resolve("bad.toml"), "name = 3");
        assertEquals(2, line.run("draw", "bad.toml", "-o", "bad.svg").status());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(2, files.count());
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sheet.png | sheet.png: a drawing's name ends with .svg, .html or .pdf; choose one of these.",
                "sheet | sheet: a drawing's name ends with .svg, .html or .pdf; choose one of these.",
                "none/sheet.pdf | none/sheet.pdf: there is no such folder; make it first.",
                "sheet.pdf --paper a3 | There is no paper \"a3\"; there are `a4` and `letter`."
            })
    void what_cannot_be_written_gets_one_sentence(String rest, String sentence) throws IOException {
        Result result = line.run(("draw quayside.toml -o " + rest).split(" ", -1));
        assertEquals(sentence + "\n", result.err());
        assertEquals(2, result.status());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void a_pdf_says_which_names_it_cannot_show() throws IOException {
        String plan = Files.readString(folder.resolve("quayside.toml")).replace("Band", "→");
        Files.writeString(folder.resolve("arrows.toml"), plan);
        Result result = line.run("draw", "arrows.toml", "-o", "arrows.pdf");
        assertTrue(result.out().contains("lack some of →;"), result.out());
        assertFalse(line.run("draw", "arrows.toml", "-o", "arrows.svg").out().contains("lack"));
    }

    private String written(String file) throws IOException {
        return Files.readString(folder.resolve(file), StandardCharsets.ISO_8859_1);
    }
}
