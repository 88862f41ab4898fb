package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PaperTest {
    private static final TerminalSize SIZE = new TerminalSize(12, 3);
    private static final String[] TEXTS = {"Q-03", "港内放送", " ", "C4→R2", "                "};
    private static final List<Ink> INKS = List.of(Ink.values());
    private static final long SEED = 20261126;

    private final DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(SIZE);
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    @Test
    void whatever_it_showed_before_the_terminal_shows_the_last_sheet() throws IOException {
        Random random = new Random(SEED);
        Paper paper = Paper.on(terminal, true);
        for (int round = 0; round < 2_000; round++) {
            Sheet sheet = new Sheet(SIZE);
            Pen pen = Pen.on(sheet, Views.FULL);
            for (int piece = random.nextInt(6); piece > 0; piece--) {
                String text = TEXTS[random.nextInt(TEXTS.length)];
                Ink ink = INKS.get(random.nextInt(INKS.size()));
                pen.put(random.nextInt(14) - 2, random.nextInt(3), text, ink);
            }
            if (random.nextInt(20) == 0) {
                paper.clear();
            }
            paper.show(sheet);
            assertShows(sheet, "seed " + SEED + ", round " + round);
        }
    }

    private void assertShows(Sheet sheet, String when) {
        for (int row = 0; row < SIZE.getRows(); row++) {
            for (int column = 0; column < SIZE.getColumns(); column++) {
                if (sheet.isCovered(column, row)) {
                    continue;
                }
                String where = when + ", column " + column + ", row " + row;
                TextCharacter cell = terminal.getCharacter(column, row);
                Ink ink = sheet.ink(column, row);
                assertEquals(String.valueOf(sheet.character(column, row)), cell.getCharacterString(), where);
                assertEquals(ink.bold(), cell.getModifiers().contains(SGR.BOLD), where);
                assertEquals(ink.reverse(), cell.getModifiers().contains(SGR.REVERSE), where);
                assertEquals(ink.hue().shade(), cell.getForegroundColor(), where);
            }
        }
    }

    @Test
    void only_what_differs_is_written() throws IOException {
        Paper paper = Paper.on(DrawnFrames.terminal(bytes, SIZE), true);
        paper.show(with("R1 open"));
        bytes.reset();
        paper.show(with("R1 open"));
        assertEquals("", bytes.toString(StandardCharsets.UTF_8));
        paper.show(with("R2 open"));
        assertEquals("\u001b[0m\u001b[1;2H2", bytes.toString(StandardCharsets.UTF_8));
    }

    @Test
    void cleared_it_has_neither_cursor_nor_whatever_else_wrote_there() throws IOException {
        Paper paper = Paper.on(DrawnFrames.terminal(bytes, SIZE), true);
        paper.show(with("R1 open"));
        bytes.reset();
        paper.clear();
        paper.show(with("R1 open"));
        assertEquals(
                "\u001b[0m\u001b[?25l\u001b[2J\u001b[0m\u001b[1;1HR1 open", bytes.toString(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @EnumSource(Hue.class)
    void colours_have_the_codes_that_lanterna_has(Hue hue) {
        assertArrayEquals(hue.shade().getForegroundSGRSequence(), hue.code().getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void another_size_leaves_it_blank_and_is_told_once() throws IOException {
        Paper paper = Paper.on(terminal, true);
        paper.show(with("R1 open"));
        assertFalse(paper.isResized());
        TerminalSize wider = new TerminalSize(20, 4);
        terminal.setTerminalSize(wider);
        assertTrue(paper.isResized());
        assertEquals(wider, paper.size());
        assertFalse(paper.isResized());
        assertEquals(" ", terminal.getCharacter(0, 0).getCharacterString());
    }

    @Test
    void what_was_typed_and_not_read_goes_when_it_is_closed() throws IOException {
        Paper paper = Paper.on(terminal, true);
        terminal.addInput(new KeyStroke('q', false, false));
        terminal.addInput(new KeyStroke('n', false, false));
        assertEquals(Optional.of(new KeyStroke('q', false, false)), paper.stroke());
        paper.close();
        assertEquals(Optional.empty(), Optional.ofNullable(terminal.pollInput()));
    }

    private static Sheet with(String text) {
        Sheet sheet = new Sheet(SIZE);
        Pen.on(sheet, Views.FULL).put(0, 0, text, Ink.PLAIN);
        return sheet;
    }
}
