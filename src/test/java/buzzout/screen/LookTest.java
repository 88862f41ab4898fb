package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;

class LookTest {
    private static final Map<String, String> UTF_8 = Map.of("LANG", "en_GB.UTF-8", "TERM", "xterm");

    @Test
    void a_modern_terminal_gets_colours_and_symbols() {
        assertEquals(new Look(true, false), Look.from(UTF_8, false, false));
    }

    @Test
    void the_person_can_ask_for_less() {
        assertEquals(new Look(false, true), Look.from(UTF_8, true, true));
    }

    @Test
    void no_color_counts_unless_it_is_empty() {
        assertEquals(new Look(false, false), Look.from(Map.of("LANG", "C.utf8", "NO_COLOR", "1"), false, false));
        assertEquals(new Look(true, false), Look.from(Map.of("LANG", "C.utf8", "NO_COLOR", ""), false, false));
    }

    @Test
    void another_locale_or_the_linux_console_gets_ascii() {
        assertEquals(new Look(true, true), Look.from(Map.of("LANG", "en_GB.UTF-8", "LC_ALL", "C"), false, false));
        assertEquals(new Look(true, true), Look.from(Map.of("LANG", "C.UTF-8", "TERM", "linux"), false, false));
        assertEquals(new Look(true, true), Look.from(Map.of(), false, false));
    }
}
