package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CleanTest {
    static Stream<Arguments> texts() {
        return Stream.of(
                Arguments.of("\u001b[31mred", "?[31mred", "?[31mred"),
                Arguments.of("a\tb", "a b", "a b"),
                Arguments.of("line\nbreak", "line?break", "line?break"),
                Arguments.of("C1 \u009b2J", "C1 ?2J", "C1 ?2J"),
                Arguments.of("abc\u202ecba", "abc?cba", "abc?cba"),
                Arguments.of("e\u0301", "e?", "e?"),
                Arguments.of("\uD83D\uDD27", "?", "?"),
                Arguments.of("\uD800", "?", "?"),
                Arguments.of("\u2705", "?", "?"),
                Arguments.of("\u25FD\u2329", "??", "??"),
                Arguments.of("R1→C1 · 4.7 Ω", "R1→C1 · 4.7 Ω", "R1->C1 - 4.7 Ohm"),
                Arguments.of("größe", "größe", "gr??e"));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void only_plain_characters_are_left(String text, String symbols, String ascii) {
        assertEquals(symbols, Clean.text(text, false));
        assertEquals(ascii, Clean.text(text, true));
    }

    @Test
    void whatever_comes_can_be_drawn() throws IOException {
        long seed = 20261125;
        Random random = new Random(seed);
        for (int round = 0; round < 2000; round++) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < 40; i++) {
                text.append((char) random.nextInt(round % 2 == 0 ? 0x10000 : 0x100));
            }
            boolean ascii = random.nextBoolean();
            Sheet sheet = new Sheet(new TerminalSize(30, 1));
            Pen pen = Pen.on(sheet, new Look(true, ascii));
            pen.put(random.nextInt(40) - 20, 0, text.toString(), Ink.PLAIN);
            Paper.on(new DefaultVirtualTerminal(sheet.size()), true).show(sheet);
            String clean = pen.clean(text.toString());
            assertTrue(
                    clean.chars().noneMatch(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT),
                    () -> "seed " + seed + ": " + clean);
        }
    }
}
