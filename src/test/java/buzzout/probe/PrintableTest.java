package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintableTest {
    @ParameterizedTest
    @CsvSource(
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "USB Serial (COM3),USB Serial (COM3)",
                "Prüfgerät 基板,Prüfgerät 基板",
                "\u001b[2J,\\x1B[2J",
                "\u009b31m,\\x9B31m",
                "a\u202eb,a\\u202Eb",
                "a\u2066b,a\\u2066b",
                "a\u200bb,a\\u200Bb",
                "\ud83d\ude00,\ud83d\ude00",
                "\ud83d,\\uD83D",
                "\u2028,\\u2028"
            })
    void turns_what_a_terminal_would_obey_into_codes(String text, String printable) {
        assertEquals(printable, Printable.of(text));
    }
}
