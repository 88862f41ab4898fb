package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.e2e.Needs;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What is written for a browser, in one: names that are markup and scripts stand there as they are called, and do nothing. */
@Timeout(120) // against hanging only
class BrowserTest {
    /** Would be the page's title, if it ran. */
    private static final String SCRIPT = "<script>document.title='taken'</script>";

    private static final String BOARD = "</title>" + SCRIPT + "\"&amp;";

    /** Names of keys and nets hold 24 characters and no space; what runs in the second is the shortest that tells. */
    private static final List<String> KEYS =
            List.of("<script>title=1</script>", "<b/onclick=title=1>", "--><h1>", "\"'&lt;]]>");

    private static final String COLUMN = "</text></svg><h1>";

    private static final Pattern RUNS =
            Pattern.compile("<script|<h1>[^<]*<h1>|<[^>]* on\\w+=", Pattern.CASE_INSENSITIVE);

    @TempDir
    Path folder;

    private CommandLineCase line;

    @BeforeEach
    void open() throws IOException, InterruptedException {
        Needs.chromium();
        line = CommandLineCase.in(folder);
        Files.writeString(folder.resolve("hostile.toml"), """
                name = '''%s'''
                controller = "ATmega32U4"
                [rows]
                R1 = { pin = "D0", keys = ['''%s''', '''%s'''] }
                R2 = { pin = "D1", keys = ['''%s''', '''%s'''] }
                [columns]
                "%s" = { pin = "D4", keys = ['''%2$s''', '''%4$s'''], colour = "red" }
                "C2" = { pin = "D6", keys = ['''%3$s''', '''%5$s'''] }
                """.formatted(
                        BOARD, KEYS.get(0), KEYS.get(1), KEYS.get(2), KEYS.get(3), COLUMN));
        assertEquals("", line.run("check", "hostile.toml").err());
    }

    @Test
    void a_report_shows_hostile_names_marks_and_notes_as_text_and_runs_none_of_them() throws Exception {
        line.run("simulate", "hostile.toml", "--unit", SCRIPT, "--fault", "dead:" + KEYS.get(0), "--log", "h.jsonl");
        String note = "{\"event\":\"noted\",\"ms\":99999,\"text\":\"" + SCRIPT + "\\u001b[2J\\u202e --> <!-- \"}\n";
        String log = Files.readString(folder.resolve("h.jsonl"));
        int end = log.lastIndexOf('\n', log.length() - 2) + 1;
        Files.writeString(folder.resolve("h.jsonl"), log.substring(0, end) + note);
        line.run("report", "h.jsonl", "-o", "report.html");

        String shown = shown("report.html");

        assertShows(shown, BOARD);
        KEYS.forEach(key -> assertShows(shown, key));
        assertShows(shown, SCRIPT + "\\x1B[2J\\u202E --> <!-- ");
        assertHarmless(shown);

        // Were one not escaped after all, the page's policy would keep it from running.
        String spoilt = Files.readString(folder.resolve("report.html")).replace("<h1>", SCRIPT + "<h1>");
        Files.writeString(folder.resolve("spoilt.html"), spoilt);
        String kept = shown("spoilt.html");
        assertTrue(kept.contains(SCRIPT) && !kept.contains("<title>taken"), kept);
    }

    @Test
    void a_drawing_shows_them_as_text_too_as_a_page_and_as_a_picture() throws Exception {
        for (String file : List.of("wiring.html", "wiring.svg")) {
            assertEquals(0, line.run("draw", "hostile.toml", "-o", file).status());
            String shown = shown(file);
            assertShows(shown, BOARD);
            KEYS.forEach(key -> assertShows(shown, key));
            assertShows(shown, COLUMN);
            assertHarmless(shown);
        }
        System.out.println("figure: names that are scripts, in a report and two drawings in Chromium | 0 ran, all shown"
                + " as text | 0");
    }

    @Test
    void this_browser_would_run_a_script() throws Exception {
        Files.writeString(folder.resolve("open.html"), "<!DOCTYPE html><title>mine</title>" + SCRIPT);
        assertTrue(shown("open.html").contains("<title>taken</title>"));
    }

    /** As the browser writes its own text down again. */
    private static void assertShows(String page, String text) {
        String written = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
        assertTrue(page.contains(written), () -> written + " is not in " + page);
    }

    private static void assertHarmless(String page) {
        assertFalse(page.contains("<title>taken"), page);
        assertFalse(RUNS.matcher(page).find(), page);
    }

    /** The page after it was loaded and its scripts have run. */
    private String shown(String file) throws IOException, InterruptedException {
        Path dump = folder.resolve("shown");
        Process browser = new ProcessBuilder(
                        "chromium",
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--no-first-run",
                        "--user-data-dir=" + folder.resolve("browser"),
                        "--dump-dom",
                        folder.resolve(file).toUri().toString())
                .redirectOutput(dump.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertTrue(browser.waitFor(60, TimeUnit.SECONDS), "chromium shows " + file);
        String shown = Files.readString(dump, StandardCharsets.UTF_8);
        assertTrue(shown.length() > 30, file + ": chromium shows nothing, and ended with " + browser.exitValue());
        return shown;
    }
}
