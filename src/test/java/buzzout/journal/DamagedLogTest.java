package buzzout.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.ExamplePlan;
import buzzout.session.Event;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class DamagedLogTest {
    private static final List<Event> EVENTS = EveryEvent.list();
    private static final List<String> LINES = lines();

    @Test
    void cut_at_any_byte_every_whole_line_comes_back_and_the_torn_one_is_named() throws IOException {
        byte[] whole = (String.join("\n", LINES) + "\n").getBytes(StandardCharsets.UTF_8);
        int headerEnd = LINES.get(0).getBytes(StandardCharsets.UTF_8).length;
        for (int cut = headerEnd; cut <= whole.length; cut++) {
            byte[] rest = Arrays.copyOf(whole, cut);
            String text = new String(rest, StandardCharsets.ISO_8859_1);
            int breaks = (int) text.chars().filter(each -> each == '\n').count();
            boolean lastIsWhole = cut < whole.length && whole[cut] == '\n';
            boolean torn = !text.endsWith("\n") && !lastIsWhole;
            int intact = Math.max(breaks - 1, 0) + (lastIsWhole && breaks > 0 ? 1 : 0);
            LogFile file = read(rest);
            assertEquals(EVENTS.subList(0, intact), file.log().orElseThrow().events(), "cut at " + cut);
            assertEquals(torn ? 1 : 0, file.problems().size(), "cut at " + cut + file.problems());
            if (torn) {
                assertEquals(breaks + 1, file.problems().get(0).line());
            }
        }
    }

    @Test
    void cut_within_its_header_a_log_has_no_plan_and_says_so() throws IOException {
        byte[] header = LINES.get(0).getBytes(StandardCharsets.UTF_8);
        for (int cut = 0; cut < header.length; cut++) {
            LogFile file = read(Arrays.copyOf(header, cut));
            assertTrue(file.log().isEmpty());
            assertEquals(1, file.problems().size());
        }
    }

    @Test
    void any_spoiled_line_costs_itself_and_no_other() throws IOException {
        List<String> spoilings = List.of(
                "x", "\u0000", "{", "}", "[]", "7", "null", "{\"event\":7}", "{\"event\":\"closed\"}", "\udcff");
        for (int line = 1; line < LINES.size(); line++) {
            for (String spoiling : spoilings) {
                LogFile file = read(bytes(replaced(line, spoiling)));
                assertEquals(without(line), file.log().orElseThrow().events());
                assertEquals(1, file.problems().size());
                assertEquals(line + 1, file.problems().get(0).line());
            }
        }
    }

    @Test
    void any_line_with_a_stray_byte_costs_itself_and_no_other() throws IOException {
        for (int line = 1; line < LINES.size(); line++) {
            String spoiled = LINES.get(line).substring(0, LINES.get(line).length() / 2)
                    + '\u0007'
                    + LINES.get(line).substring(LINES.get(line).length() / 2);
            LogFile file = read(bytes(replaced(line, spoiled)));
            assertEquals(without(line), file.log().orElseThrow().events(), spoiled);
            assertEquals(
                    "q.jsonl:" + (line + 1) + ": the line is not one JSON object; the line was left out",
                    file.problems().get(0).toString());
        }
    }

    @Test
    void bytes_that_are_not_text_cost_one_line() throws IOException {
        byte[] bytes = bytes(replaced(3, "@@"));
        for (int at = 0; at < bytes.length; at++) {
            bytes[at] = bytes[at] == '@' ? (byte) 0xff : bytes[at];
        }
        LogFile file = read(bytes);
        assertEquals(without(3), file.log().orElseThrow().events());
        assertEquals(
                "[q.jsonl:4: the line is not UTF-8 text; the line was left out]",
                file.problems().toString());
    }

    @Test
    void a_line_of_many_mebibytes_is_passed_by() throws IOException {
        LogFile file = read(bytes(replaced(3, "[".repeat(5 << 20))));
        assertEquals(without(3), file.log().orElseThrow().events());
        assertEquals(
                "[q.jsonl:4: the line is longer than 1 MiB; the line was left out]",
                file.problems().toString());
    }

    @Test
    void a_nesting_bomb_is_one_bad_line() throws IOException {
        String bomb = "{\"event\":" + "[".repeat(400_000) + "]".repeat(400_000) + "}";
        assertEquals(
                without(3), read(bytes(replaced(3, bomb))).log().orElseThrow().events());
    }

    @Test
    void a_log_saved_elsewhere_with_other_line_ends_and_a_byte_order_mark_reads_the_same() throws IOException {
        LogFile file = read(("\uFEFF" + String.join("\r\n\r\n", LINES)).getBytes(StandardCharsets.UTF_8));
        assertEquals(EVENTS, file.log().orElseThrow().events());
        assertEquals(List.of(), file.problems());
    }

    @Test
    void the_same_problem_on_many_lines_is_told_once() throws IOException {
        List<String> lines = new ArrayList<>(LINES);
        for (int more = 0; more < 1000; more++) {
            lines.add("{\"event\":\"touched\",\"ms\":" + more + "}");
        }
        assertEquals(
                "[q.jsonl:" + (LINES.size() + 1)
                        + ": this version knows no event \"touched\"; a newer one may have written it; the line was"
                        + " left out (and on 999 more lines)]",
                read(bytes(lines)).problems().toString());
    }

    @Test
    void a_spoiled_file_does_not_flood_the_reader() throws IOException {
        List<String> lines = new ArrayList<>(LINES);
        for (int more = 0; more < 1000; more++) {
            lines.add("{\"event\":\"odd" + more + "\"}");
        }
        List<LogProblem> problems = read(bytes(lines)).problems();
        assertEquals(51, problems.size());
        assertEquals(
                "q.jsonl: 950 more lines could not be used", problems.get(50).toString());
    }

    private static List<String> lines() {
        EventWriter writer = new EventWriter(ExamplePlan.quayside());
        List<String> lines = new ArrayList<>(List.of(HeaderLine.write(EveryEvent.HEADER)));
        EVENTS.forEach(event -> lines.add(writer.line(event)));
        return lines;
    }

    private static List<String> replaced(int line, String by) {
        List<String> lines = new ArrayList<>(LINES);
        lines.set(line, by);
        return lines;
    }

    private static List<Event> without(int line) {
        List<Event> events = new ArrayList<>(EVENTS);
        events.remove(line - 1);
        return events;
    }

    private static byte[] bytes(List<String> lines) {
        return (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static LogFile read(byte[] bytes) throws IOException {
        return JournalReader.read(Path.of("q.jsonl").toString(), new ByteArrayInputStream(bytes));
    }
}
