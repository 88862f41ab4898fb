package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import org.junit.jupiter.api.Test;

class SheetTest {
    private static final TerminalSize SIZE = new TerminalSize(6, 1);

    @Test
    void is_the_same_only_where_character_and_ink_are() {
        Sheet strong = written(pen -> pen.put(0, 0, "Q-03", Ink.STRONG));
        assertTrue(strong.hasRow(0, written(pen -> pen.put(0, 0, "Q-03", Ink.STRONG))));
        Sheet plain = written(pen -> pen.put(0, 0, "Q-03", Ink.PLAIN));
        assertFalse(strong.hasRow(0, plain));
        assertFalse(strong.hasCell(0, 0, plain));
        assertTrue(strong.hasCell(4, 0, plain));
    }

    @Test
    void a_plain_blank_is_nothing_written() {
        assertTrue(new Sheet(SIZE).hasRow(0, written(pen -> pen.put(0, 0, "      ", Ink.PLAIN))));
        assertFalse(new Sheet(SIZE).hasRow(0, written(pen -> pen.put(0, 0, "      ", Ink.WAITING))));
    }

    @Test
    void of_a_character_that_loses_one_of_its_two_cells_nothing_stays() {
        Sheet first = written(pen -> {
            pen.put(0, 0, "港内", Ink.PLAIN);
            pen.put(1, 0, "x", Ink.PLAIN);
            pen.put(2, 0, "y", Ink.PLAIN);
        });
        assertEquals(" xy\n", first.text());
        Sheet second = written(pen -> {
            pen.put(1, 0, "港内", Ink.PLAIN);
            pen.put(0, 0, "放", Ink.PLAIN);
        });
        assertEquals("放 内\n", second.text());
    }

    @Test
    void cuts_a_character_that_does_not_fit_as_a_whole() {
        assertEquals(
                "港\n",
                written(pen -> pen.part(0, 0, 3, 1).put(0, 0, "港内", Ink.PLAIN)).text());
    }

    private interface Writing {
        void on(Pen pen);
    }

    private static Sheet written(Writing writing) {
        Sheet sheet = new Sheet(SIZE);
        writing.on(Pen.on(sheet, new Look(true, false)));
        return sheet;
    }
}
