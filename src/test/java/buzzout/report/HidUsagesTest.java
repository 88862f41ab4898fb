package buzzout.report;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.e2e.Needs;
import buzzout.plan.Key;
import buzzout.plan.Place;
import buzzout.plan.Plan;
import buzzout.plan.PlanReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HidUsagesTest {
    private static final Path USB_IDS = Path.of("/usr/share/misc/usb.ids");

    /** A label of ours, and a word of the published name of its usage. */
    private static final Map<String, String> PUBLISHED = Map.ofEntries(
            Map.entry("Enter", "Return"),
            Map.entry("Esc", "Escape"),
            Map.entry("Back", "Backspace"),
            Map.entry("Tab", "Tab"),
            Map.entry("Space", "Space Bar"),
            Map.entry("-", "Minus and underscore"),
            Map.entry("=", "Equal and Plus"),
            Map.entry("[", "Braces Left"),
            Map.entry("]", "Braces Right"),
            Map.entry("\\", "\\ and |"),
            Map.entry(";", "Semicolon"),
            Map.entry("'", "Double Quotes"),
            Map.entry("`", "and Tilde"),
            Map.entry(",", "Comma and Less"),
            Map.entry(".", "Period"),
            Map.entry("/", "Question Mark"),
            Map.entry("Caps", "Caps Lock"),
            Map.entry("PrtSc", "Print Screen"),
            Map.entry("ScrLk", "Scroll Lock"),
            Map.entry("Pause", "Pause"),
            Map.entry("Ins", "Insert"),
            Map.entry("Home", "Home"),
            Map.entry("PgUp", "Page Up"),
            Map.entry("Del", "Delete Forward"),
            Map.entry("End", "End"),
            Map.entry("PgDn", "Page Down"),
            Map.entry("Right", "Right Arrow"),
            Map.entry("Left", "Left Arrow"),
            Map.entry("Down", "Down Arrow"),
            Map.entry("Up", "Up Arrow"),
            Map.entry("NumLock", "Num Lock"),
            Map.entry("KP/", "Keypad /"),
            Map.entry("KP*", "Keypad *"),
            Map.entry("KP-", "Keypad -"),
            Map.entry("KP+", "Keypad +"),
            Map.entry("KPEnter", "Keypad Enter"),
            Map.entry("KP.", "Keypad ."),
            Map.entry("Menu", "Keyboard Application"),
            Map.entry("LCtrl", "Control Left"),
            Map.entry("LShift", "Shift Left"),
            Map.entry("LAlt", "Alt Left"),
            Map.entry("LGui", "GUI Left"),
            Map.entry("RCtrl", "Control Right"),
            Map.entry("RShift", "Shift Right"),
            Map.entry("RAlt", "Alt Rig"),
            Map.entry("RGui", "GUI Right"));

    @ParameterizedTest
    @CsvSource({"a,04", "z,1D", "Z,1D", "1,1E", "0,27", "Enter,28", "Esc,29", "Backspace,2A", "Tab,2B", "Space,2C"})
    void the_codes_of_the_published_table(String label, String code) {
        assertEquals(code, written(label));
    }

    @Test
    void usb_ids_says_the_same() throws IOException {
        Needs.file(USB_IDS, "usb.ids");
        Map<Integer, String> names = pageSeven();
        assertTrue(names.size() > 150, () -> "only " + names.size() + " usages read");
        List<Executable> checks = new ArrayList<>();
        PUBLISHED.forEach((label, word) -> checks.add(() -> {
            String name = names.get(usage(label));
            assertNotNull(name, label);
            assertTrue(name.contains(word), () -> label + " would be " + name);
        }));
        for (char letter = 'A'; letter <= 'Z'; letter++) {
            String label = String.valueOf(letter);
            checks.add(() -> assertEquals(label, names.get(usage(label))));
        }
        for (int digit = 0; digit <= 9; digit++) {
            String label = Integer.toString(digit);
            checks.add(() -> assertTrue(names.getOrDefault(usage(label), "").startsWith(label + " and "), label));
        }
        for (int function = 1; function <= 24; function++) {
            String label = "F" + function;
            checks.add(() -> assertEquals(label, names.get(usage(label))));
        }
        for (int digit = 1; digit <= 5; digit++) { // from 6 on the file is one too high, and has two 8s
            String label = "KP" + digit;
            checks.add(() -> assertTrue(
                    names.getOrDefault(usage(label), "").startsWith("Keypad " + label.charAt(2) + " "), label));
        }
        assertAll(checks);
    }

    @Test
    void a_label_that_leaves_the_hand_open_is_told_by_its_side_of_the_board() {
        Plan plan = PlanReader.read("""
                        name = "Hands"
                        controller = "ATmega32U4"
                        [rows]
                        R1 = { pin = "D0", keys = "Shift A B C D shift" }
                        [columns]
                        C1 = { pin = "D1", keys = "Shift" }
                        C2 = { pin = "D2", keys = "A" }
                        C3 = { pin = "D3", keys = "B" }
                        C4 = { pin = "D4", keys = "C" }
                        C5 = { pin = "D5", keys = "D" }
                        C6 = { pin = "D6", keys = "shift" }
                        """, "hands.toml").plan().orElseThrow();
        assertEquals(OptionalInt.of(0xE1), HidUsages.of(plan, plan.keys().get(0)));
        assertEquals(OptionalInt.of(0xE5), HidUsages.of(plan, plan.keys().get(5)));
    }

    @ParameterizedTest
    @CsvSource({"Band", "1A", "F25", "F0", "KP", "Ä"})
    void a_label_that_is_no_usages_name_has_none(String label) {
        assertEquals(OptionalInt.empty(), HidUsages.of(onlyKeyPlan(), key(label)));
    }

    private static String written(String label) {
        return String.format(Locale.ROOT, "%02X", usage(label));
    }

    private static int usage(String label) {
        return HidUsages.of(onlyKeyPlan(), key(label)).orElseThrow();
    }

    private static Plan onlyKeyPlan() {
        return buzzout.plan.ExamplePlan.quayside();
    }

    private static Key key(String label) {
        return new Key(0, label, 0, 4, new Place(0, 0, 1));
    }

    private static Map<Integer, String> pageSeven() throws IOException {
        Map<Integer, String> names = new TreeMap<>();
        boolean within = false;
        for (String line : Files.readAllLines(USB_IDS, StandardCharsets.UTF_8)) {
            if (line.startsWith("HUT ")) {
                within = line.startsWith("HUT 07 ");
            } else if (within && line.startsWith("\t")) {
                String[] parts = line.strip().split("  ", 2);
                names.put(Integer.parseInt(parts[0], 16), parts[1]);
            } else if (!line.startsWith("\t")) {
                within = false;
            }
        }
        return names;
    }
}
