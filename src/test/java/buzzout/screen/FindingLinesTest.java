package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.KeyOpen;
import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.Suspect;
import com.googlecode.lanterna.TerminalSize;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FindingLinesTest {
    private static final int COLUMNS = 160;

    @Test
    void with_room_every_finding_has_its_members_and_its_next_step() {
        List<String> lines = lines(20, Focus.FIRST);
        assertEquals(
                3, lines.stream().filter(line -> line.contains("look alike")).count());
        assertEquals(6, lines.stream().filter(line -> line.startsWith("   - ")).count());
        assertEquals(
                3, lines.stream().filter(line -> line.startsWith("   Next: ")).count());
    }

    @Test
    void the_least_probable_lose_their_members_first_and_then_their_next_step() {
        assertEquals(List.of("1", "- -", "Next", "2", "Next", "3", "Next"), kinds(lines(9, Focus.FIRST)));
        assertEquals(List.of("1", "Next", "2", "3"), kinds(lines(4, Focus.FIRST)));
        assertEquals(List.of("1", "2", "3"), kinds(lines(3, Focus.FIRST)));
    }

    @Test
    void the_chosen_one_is_told_whole_however_little_room_there_is() {
        List<String> lines = lines(3, Focus.FIRST.choosing(1, 0, 0));
        assertEquals(List.of("1", "2", "- -", "Next", "Seen", "3"), kinds(lines));
    }

    @Test
    void whoever_is_told_to_solder_is_told_to_unplug_first() {
        Finding clear = finding(1, 3);
        String told = String.join("\n", lines(30, Focus.FIRST.choosing(0, 3, 0), List.of(clear)));
        assertTrue(told.contains("Repair: unplug first. Reheat"), told);
    }

    /** One word for each line; members in a row count as one. */
    private static List<String> kinds(List<String> lines) {
        return lines.stream()
                .map(line -> line.startsWith("   - ") ? "- -" : line.strip().split("[ :]", -1)[0])
                .collect(
                        java.util.ArrayList::new,
                        (kinds, kind) -> {
                            if (kinds.isEmpty() || !kinds.get(kinds.size() - 1).equals(kind)) {
                                kinds.add(kind);
                            }
                        },
                        List::addAll);
    }

    private static List<String> lines(int rows, Focus focus) {
        return lines(rows, focus, List.of(finding(2, 0), finding(2, 2), finding(2, 4)));
    }

    private static List<String> lines(int rows, Focus focus, List<Finding> findings) {
        Sitting sitting = Views.sitting().found().quietCheckDone();
        View view = Views.view(Views.FULL, sitting.snapshot(new Diagnosis(findings, 0, List.of())))
                .with(focus);
        Sheet sheet = new Sheet(new TerminalSize(COLUMNS, rows));
        return FindingLines.of(view, Pen.on(sheet, Views.FULL)).stream()
                .map(FindingLines.Line::text)
                .toList();
    }

    private static Finding finding(int suspects, int firstKey) {
        List<Suspect> dead = IntStream.range(firstKey, firstKey + suspects)
                .mapToObj(key -> new Suspect(new KeyOpen(key), 0.9 / suspects))
                .toList();
        return new Finding(dead, List.of(), 0.9, List.of("nothing came"), Optional.of("press it again"));
    }
}
