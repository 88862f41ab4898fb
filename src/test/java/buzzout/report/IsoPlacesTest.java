package buzzout.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.e2e.Needs;
import buzzout.plan.ExamplePlan;
import buzzout.plan.NewPlan;
import buzzout.plan.Plan;
import buzzout.plan.PlanReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class IsoPlacesTest {
    private static final Path SYMBOLS = Path.of("/usr/share/X11/xkb/symbols/us");
    private static final Map<String, String> SPELT_OUT = Map.of(
            "minus",
            "-",
            "equal",
            "=",
            "bracketleft",
            "[",
            "bracketright",
            "]",
            "semicolon",
            ";",
            "apostrophe",
            "'",
            "comma",
            ",",
            "period",
            ".",
            "slash",
            "/");

    @Test
    void labels_have_the_places_that_xkb_data_gives_them() throws IOException {
        Needs.file(SYMBOLS, "xkb-data");
        String basic = Files.readString(SYMBOLS);
        int start = basic.indexOf("xkb_symbols \"basic\"");
        Matcher keys = Pattern.compile("key <A([A-E]\\d\\d)>\\s*\\{\\s*\\[\\s*(\\w+)")
                .matcher(basic.substring(start, basic.indexOf("\n};", start)));
        int seen = 0;
        while (keys.find()) {
            String label = SPELT_OUT.getOrDefault(keys.group(2), keys.group(2));
            assertEquals(
                    keys.group(1),
                    IsoPlaces.usual(label)
                            .map(place -> String.format(Locale.ROOT, "%c%02d", place.row(), place.column()))
                            .orElse("none"),
                    label);
            seen++;
        }
        assertEquals(12 + 12 + 11 + 10, seen);
    }

    @Test
    void the_example_is_told_whole() {
        Map<String, String> places = places(ExamplePlan.quayside());
        assertEquals("D03", places.get("E"));
        assertEquals("D00", places.get("Esc"));
        assertEquals("D11", places.get("Back"));
        assertEquals("C11", places.get("'"));
        assertEquals("B00", places.get("Shift"));
        assertEquals("A04", places.get("Space"));
        assertEquals("A11", places.get("Right"));
        assertEquals(46, places.size());
    }

    @Test
    void a_line_whose_labels_mostly_agree_is_told_and_a_stranger_counted() {
        assertEquals(Map.of("A", "D01", "Z", "D02", "E", "D03", "R", "D04", "T", "D05"), places(board("A Z E R T")));
    }

    @Test
    void a_panel_of_its_own_words_is_not_told() {
        assertEquals(Map.of(), places(board("Up Down Mode", "A B VFO")));
        assertEquals(
                Map.of(), places(read(NewPlan.text(4, 12, ExamplePlan.quayside().controller()))));
    }

    @Test
    void a_block_of_digits_is_no_row_of_digits() {
        assertEquals(Map.of(), places(board("7 8 9", "4 5 6", "1 2 3")));
    }

    @Test
    void rows_upside_down_are_not_told() {
        assertEquals(Map.of(), places(board("z x c", "a s d", "q w e")));
        assertTrue(places(board("q w e", "a s d", "z x c")).size() == 9);
    }

    private static Map<String, String> places(Plan plan) {
        Map<String, String> places = new TreeMap<>();
        IsoPlaces.of(plan)
                .forEach((key, place) -> places.put(plan.keys().get(key).name(), place));
        return places;
    }

    /** A board drawn in these lines, each a row. */
    private static Plan board(String... lines) {
        int columns = lines[0].split(" ", -1).length;
        String rows = IntStream.range(0, lines.length)
                .mapToObj(row -> "R" + row + " = { pin = \"D" + row + "\", keys = \"" + lines[row] + "\" }\n")
                .collect(Collectors.joining());
        String nets = IntStream.range(0, columns)
                .mapToObj(column -> "C" + column + " = { pin = \"B" + column + "\", keys = \""
                        + java.util.stream.Stream.of(lines)
                                .map(line -> line.split(" ", -1)[column])
                                .collect(Collectors.joining(" "))
                        + "\" }\n")
                .collect(Collectors.joining());
        return read("name = \"Panel\"\ncontroller = \"ATmega32U4\"\n[rows]\n" + rows + "[columns]\n" + nets);
    }

    private static Plan read(String text) {
        return PlanReader.read(text, "panel.toml").plan().orElseThrow();
    }
}
