package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.graphics.BasicTextImage;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SheetTest {
    private static final TerminalSize SIZE = new TerminalSize(6, 1);

    private final BasicTextImage paper = new BasicTextImage(SIZE);

    @Test
    void puts_nothing_on_paper_that_shows_it_already() {
        assertTrue(written(pen -> pen.put(0, 0, "Q-03", Ink.STRONG)));
        assertFalse(written(pen -> pen.put(0, 0, "Q-03", Ink.STRONG)));
        assertTrue(written(pen -> pen.put(0, 0, "Q-03", Ink.PLAIN)));
        assertEquals("Q-03  ", text());
    }

    @Test
    void clears_what_is_not_written_again() {
        written(pen -> pen.put(0, 0, "港内放送", Ink.PLAIN));
        written(pen -> pen.put(1, 0, "ab", Ink.PLAIN));
        assertEquals(" ab   ", text());
    }

    @Test
    void of_a_character_that_loses_one_of_its_two_cells_nothing_stays() {
        written(pen -> {
            pen.put(0, 0, "港内", Ink.PLAIN);
            pen.put(1, 0, "x", Ink.PLAIN);
            pen.put(2, 0, "y", Ink.PLAIN);
        });
        assertEquals(" xy   ", text());
    }

    @Test
    void cuts_a_character_that_does_not_fit_as_a_whole() {
        written(pen -> pen.part(0, 0, 3, 1).put(0, 0, "港内", Ink.PLAIN));
        assertEquals("港", text().strip());
    }

    private interface Writing {
        void on(Pen pen);
    }

    private boolean written(Writing writing) {
        Sheet sheet = new Sheet(SIZE);
        writing.on(Pen.on(sheet, new Look(true, false)));
        return sheet.onto(paper.newTextGraphics());
    }

    private String text() {
        return IntStream.range(0, SIZE.getColumns())
                .mapToObj(column -> paper.getCharacterAt(column, 0).getCharacterString())
                .collect(Collectors.joining());
    }
}
