package buzzout.line;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class HelpTest {
    @Test
    void help_has_a_synopsis_the_description_and_what_each_word_means() {
        Usage usage = Usage.of("program ride", "Go by train.", "At any time.")
                .taking(
                        Operand.of("FROM", "Where from."),
                        Operand.optional("BY", "Which way."),
                        Operand.many("TO", "Where to."))
                .with(
                        Option.many("--bag", "BAG", "What to carry."),
                        Option.of("--seat", "NAME", "Which seat.").or("-s"),
                        Option.needed("--class", "1|2", "Which class."),
                        Either.of("--light", "With light."),
                        Flag.of("-f", "--fast", "In haste."),
                        Flag.of("--back", "And back."));
        assertEquals("""
                Usage: program ride [-fh] [--back] [--[no-]light] --class=1|2 [-s=NAME]
                                    [--bag=BAG...]... FROM [BY] TO...
                Go by train.
                At any time.
                      FROM           Where from.
                      [BY]           Which way.
                      TO...          Where to.
                      --back         And back.
                      --bag=BAG...   What to carry.
                      --class=1|2    Which class.
                  -f, --fast         In haste.
                  -h, --help         Show this help.
                      --[no-]light   With light.
                  -s, --seat=NAME    Which seat.
                """, Help.of(usage));
    }

    @Test
    void what_is_handed_on_stands_in_the_synopsis_only() {
        assertEquals("""
                Usage: program [-h] COMMAND
                  -h, --help   Show this help.
                """, Help.of(Usage.of("program").taking(Operand.handedOn("COMMAND"))));
    }

    @Test
    void a_long_meaning_goes_on_below_itself_and_is_broken_only_at_blanks() {
        assertEquals(
                """
                  one     This is as long as a line can be in which a word such as a-b-c.svg or
                            .pdf stays whole.
                  three   Short.
                """,
                Columns.of(
                        List.of(
                                new Columns.Row(
                                        "one",
                                        "This is as long as a line can be in which a word such as a-b-c.svg or .pdf stays whole."),
                                new Columns.Row("three", "Short.")),
                        3));
    }

    @Test
    void the_last_line_may_fill_all_80_columns_and_others_79() {
        String word = "x".repeat(39);
        assertEquals(word + " " + word + "x\n", Paragraph.of("", word + " " + word + "x", 0));
        assertEquals(word + " " + word + "\ny\n", Paragraph.of("", word + " " + word + " y", 0));
        assertEquals(word + "\n  x" + word + " y\n", Paragraph.of("", word + " x" + word + " y", 2));
    }

    @Test
    void a_word_too_long_for_a_line_has_one_of_its_own() {
        String long90 = "x".repeat(90);
        assertEquals("a\n " + long90 + "\n b\n", Paragraph.of("", "a " + long90 + " b", 1));
    }
}
