package buzzout.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.ExamplePlan;
import com.google.gson.JsonPrimitive;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JournalReaderTest {
    private static final String PLAN = new JsonPrimitive(ExamplePlan.quaysideText()).toString();
    private static final String HEADER = "{\"format\":\"buzzout-session\",\"version\":1,\"plan\":" + PLAN + "}\n";

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{'event':'closed','low':'Z9','reads':'F0'} | the plan has no pin 'Z9'",
                "{'event':'closed','low':'F0','reads':'F0'} | 'closed' pairs the pin 'F0' with itself",
                "{'event':'closed','low':'F0'} | 'closed' needs 'reads', a text",
                "{'event':'closed','low':'F0','reads':7} | 'reads' of 'closed' must be a text",
                "{'event':'called','key':'Hyper'} | the plan has no key 'Hyper'",
                "{'event':'repaired','fault':'dead:Q','or':'dead:W'} | 'or' of 'repaired' must be a list of texts",
                "{'event':'repaired','fault':'dead:Hyper'} | the plan's board has no fault 'dead:Hyper'",
                "{'event':'whole','pairs':[['D0','F0']]} | 'whole' needs 'pairs', an object from a driven pin to the list of the pins that read low",
                "{'event':'whole','pairs':{'D0':'F0'}} | 'pairs' must hold a list of pins for 'D0'",
                "{'event':'whole','pairs':{'D0':[1]}} | 'pairs' must name pins as texts",
                "{'event':'ended','ms':-3} | 'ms' of 'ended' must be a whole number, not negative, of at most 15 digits",
                "{'event':'ended','ms':1e999999999} | 'ms' of 'ended' must be a whole number, not negative, of at most 15 digits",
                "{'event':'lost'} | 'lost' needs 'changes', a whole number",
                "{'ms':4} | an event needs 'event', a text",
                "{'event':'\\u001b[2J'} | this version knows no event '\\x1B[2J'; a newer one may have written it",
            })
    void what_is_wrong_with_a_line_is_said(String line, String says) throws IOException {
        LogFile file = read(HEADER + line.replace('\'', '"') + "\n");
        assertEquals(
                "[q.jsonl:2: " + says.replaceAll("(?<!n)'(?!s )", "\"") + "; the line was left out]",
                file.problems().toString());
        assertTrue(file.log().orElseThrow().events().isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "hello | the file ends in the middle of this line",
                "{'format':'other'} | this is no session log: its first line lacks 'format':'buzzout-session'",
                "{'format':'buzzout-session'} | the header needs 'version', such as 1",
                "{'format':'buzzout-session','version':2,'program':'9.1'} | the log has format version 2 and this program reads 1; use the version of Buzzout that wrote it, '9.1'",
                "{'format':'buzzout-session','version':1} | the header needs 'plan', a text",
                "{'format':'buzzout-session','version':1,'plan':[3]} | 'plan' of the header must be a text or a list of texts, one for each line",
                "{'format':'buzzout-session','version':1,'plan':'','started':'noon'} | 'started' of the header must look like 2026-11-25T10:14:05+01:00",
            })
    void what_is_wrong_with_a_header_is_said(String line, String says) throws IOException {
        LogFile file = read(line.replace('\'', '"'));
        assertEquals(
                "[q.jsonl:1: " + says.replace('\'', '"') + "; nothing else can be read without the plan in this line]",
                file.problems().toString());
        assertTrue(file.log().isEmpty());
    }

    @Test
    void a_plan_with_an_error_is_told_with_its_own_place() throws IOException {
        LogFile file =
                read("{\"format\":\"buzzout-session\",\"version\":1,\"planFile\":\"q.toml\",\"plan\":\"name = 3\"}");
        assertTrue(file.log().isEmpty());
        assertTrue(file.problems().get(0).toString().startsWith("q.jsonl:1: the plan in this line: q.toml:1:"));
    }

    @Test
    void a_plan_may_be_given_line_by_line_and_times_left_out() throws IOException {
        String lines = PLAN.replace("\\n", "\",\"");
        LogFile file = read("{\"format\":\"buzzout-session\",\"version\":1,\"plan\":[" + lines + "]}\n"
                + "{\"event\":\"whole\",\"pairs\":{}}\n"
                + "{\"event\":\"quiet-check-done\"}\n"
                + "{\"event\":\"closed\",\"low\":\"D0\",\"reads\":\"F0\"}\n");
        SessionLog log = file.log().orElseThrow();
        assertEquals("Quayside 46", log.plan().name());
        assertEquals(0, log.events().get(0).atMillis());
        assertEquals(200, log.events().get(2).atMillis());
    }

    @Test
    void a_missing_file_a_folder_and_an_empty_file_are_told() throws IOException {
        Path missing = folder.resolve("none.jsonl");
        assertEquals(
                "[" + missing + ": there is no such file]",
                JournalReader.read(missing).problems().toString());
        assertEquals(
                "[" + folder + ": this is a folder, not a session log]",
                JournalReader.read(folder).problems().toString());
        assertEquals("[q.jsonl: the file is empty]", read("").problems().toString());
    }

    private static LogFile read(String text) throws IOException {
        return JournalReader.read("q.jsonl", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }
}
