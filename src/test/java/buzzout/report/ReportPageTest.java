package buzzout.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.journal.JournalReader;
import buzzout.journal.LogFile;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReportPageTest {
    /** Markup, an entity, quotes, an escape, a turn of the writing direction. */
    private static final String HOSTILE = "</title><script src=x>'\"&amp;\u001b[2J\u202e";

    @ParameterizedTest
    @ValueSource(strings = {"by-hand", "demo", "free-play", "good", "repaired", "roll-call", "torn"})
    void a_page_is_valid_and_needs_nothing_from_outside(String log) throws IOException {
        String page = page(log);
        assertEquals("", Nu.says(page));
        assertFalse(Pattern.compile("<script|<link|<img|<iframe|\\ssrc=|\\shref=|url\\(|@import|\\son\\w+=|\\sstyle=")
                .matcher(page)
                .find());
    }

    @Test
    void the_checker_sees_what_is_not_valid() throws IOException {
        assertFalse(Nu.says(page("good").replace("<h1>", "<h1><p>")).isEmpty());
    }

    @Test
    void its_policy_lets_its_own_style_sheet_in_and_nothing_else() throws Exception {
        String page = page("demo");
        Matcher style = Pattern.compile("<style>(.*?)</style>", Pattern.DOTALL).matcher(page);
        assertTrue(style.find());
        byte[] digest =
                MessageDigest.getInstance("SHA-256").digest(style.group(1).getBytes(StandardCharsets.UTF_8));
        String policy = "content=\"default-src &#39;none&#39;; style-src &#39;sha256-"
                + Base64.getEncoder().encodeToString(digest)
                + "&#39;; base-uri &#39;none&#39;; form-action &#39;none&#39;\"";
        assertTrue(page.contains(policy), page);
        assertFalse(style.find());
    }

    @Test
    void it_tells_the_findings_with_their_evidence_and_what_to_do() throws IOException {
        String page = page("demo");
        assertTrue(page.contains("3 findings: 33 of 46 keys good."), page);
        assertTrue(page.contains("R3 is open between M and &quot;,&quot;."), page);
        assertTrue(page.contains("With no key pressed, this conducted: C2→C3, C3→C2."), page);
        assertTrue(page.contains("Seen from the solder side"), page);
        assertTrue(page.contains("<td>O</td><td>◄\ufe0e reversed</td><td>R1→C10</td><td>C10→R1</td>"), page);
        assertTrue(page.contains("Unplug the board before you solder"), page);
    }

    @Test
    void a_repair_is_told_with_its_retest_and_the_notes_in_between() throws IOException {
        String page = page("repaired");
        assertTrue(page.contains("After 1 min 15 s: note: the leg at , had never met the iron"), page);
        assertTrue(
                page.contains(
                        "After 3 min 15 s: repaired, because R3 is open between M and &quot;,&quot;; all 4 keys that"
                                + " it can have changed are good now."),
                page);
        assertFalse(page("demo").contains("id=\"repairs\""));
    }

    @Test
    void what_was_not_tested_is_told() throws IOException {
        String page = page("torn");
        assertTrue(page.contains("7 keys untested: Alt  Space  Enter  Mode  Left  Down  Right"), page);
        assertTrue(page.contains("The log has no end; the session may have gone on."), page);
        assertTrue(page.contains("From the log: torn:193: the file ends in the middle of this line"), page);
    }

    @Test
    void a_clean_board_is_said_to_be_one() throws IOException {
        String page = page("good");
        assertTrue(page.contains("Nothing is wrong: all 46 keys are good."), page);
        assertFalse(page.contains("class=\"cap wrong\""));
        assertFalse(page.contains("Seen from the solder side"));
    }

    @Test
    void the_same_log_gives_the_same_page() throws IOException {
        assertEquals(page("demo"), page("demo"));
    }

    @Test
    void hostile_names_and_notes_stay_text() throws IOException {
        String toml =
                "name = '''Board " + HOSTILE.substring(0, HOSTILE.length() - 5) + "'''\ncontroller = \"ATmega32U4\"\n"
                        + "[rows]\nR1 = { pin = \"D0\", keys = ['<script>', '\"&lt;'] }\n"
                        + "[columns]\nC1 = { pin = \"D4\", keys = ['<script>'], colour = \"red\" }\n"
                        + "C2 = { pin = \"D6\", keys = ['\"&lt;'] }\n";
        JsonObject header = new JsonObject();
        header.addProperty("format", "buzzout-session");
        header.addProperty("version", 1);
        header.addProperty("unit", HOSTILE);
        header.addProperty("planFile", HOSTILE);
        header.addProperty("program", HOSTILE);
        header.addProperty("plan", toml);
        String log = header + "\n" + "{\"event\":\"found\",\"port\":" + new JsonPrimitive(HOSTILE) + ",\"sketch\":"
                + new JsonPrimitive(HOSTILE) + "}\n{\"event\":\"quiet-check-done\"}\n"
                + "{\"event\":\"nothing-came\",\"key\":\"<script>\"}\n"
                + "{\"event\":\"noted\",\"text\":" + new JsonPrimitive(HOSTILE) + "}\n";
        String page = page("hostile <b>", new ByteArrayInputStream(log.getBytes(StandardCharsets.UTF_8)));
        assertEquals("", Nu.says(page));
        assertFalse(page.contains("<script"), page);
        assertFalse(page.contains("<b>"), page);
        assertTrue(page.contains("&lt;/title&gt;&lt;script src=x&gt;&#39;&quot;&amp;amp;\\x1B[2J\\u202E"), page);
    }

    @Test
    void markup_left_open_is_noticed() {
        assertThrows(IllegalStateException.class, new Markup().open("p")::toString);
    }

    private static String page(String log) throws IOException {
        String resource = "/buzzout/journal/v1/" + log + ".jsonl";
        try (InputStream in = Objects.requireNonNull(ReportPageTest.class.getResourceAsStream(resource), resource)) {
            return page(log, in);
        }
    }

    private static String page(String name, InputStream in) throws IOException {
        LogFile file = JournalReader.read(name, in);
        assertTrue(file.log().isPresent(), () -> "" + file.problems());
        return ReportPage.of(file.log().get(), Outcome.of(file.log().get()), file.problems(), "0.1.0");
    }
}
