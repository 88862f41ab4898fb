package buzzout.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingTest {
    private static final Operand FROM = Operand.of("FROM", "Where from.");
    private static final Operand TO = Operand.optional("TO", "Where to.");
    private static final Flag FAST = Flag.of("-f", "--fast", "In haste.");
    private static final Either LIGHT = Either.of("--light", "With light.");
    private static final Option SEAT =
            Option.of("--seat", "NAME", "Which seat.").or("-s");
    private static final Option CLASS = Option.needed("--class", "N", "Which class.");
    private static final Option BAG = Option.many("--bag", "BAG", "What to carry.");

    private static final Usage RIDE = Usage.of("ride").taking(FROM, TO).with(FAST, LIGHT, SEAT, BAG);
    private static final Usage PAID = Usage.of("paid").taking(FROM).with(CLASS, BAG);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--seat window here there --fast",
                "here --seat=window --fast there",
                "--fast here there -s window",
                "here there -s=window -f",
                "-swindow -f here there",
                "-fswindow here there",
                "-fs window here there",
                "-f -s window -- here there"
            })
    void options_stand_anywhere_and_are_written_as_one_likes(String line) {
        Given given = given(RIDE, line);
        assertTrue(given.has(FAST));
        assertEquals(Optional.of("window"), given.value(SEAT));
        assertEquals("here", given.word(FROM));
        assertEquals(Optional.of("there"), given.optional(TO));
    }

    @Test
    void what_is_not_given_is_not_there() {
        Given given = given(RIDE, "here");
        assertFalse(given.has(FAST));
        assertEquals(Optional.empty(), given.answer(LIGHT));
        assertEquals(Optional.empty(), given.value(SEAT));
        assertEquals(List.of(), given.values(BAG));
        assertEquals(Optional.empty(), given.optional(TO));
    }

    @Test
    void either_is_answered_yes_or_no() {
        assertEquals(Optional.of(true), given(RIDE, "here --light").answer(LIGHT));
        assertEquals(Optional.of(false), given(RIDE, "--no-light here").answer(LIGHT));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "here --bag tent stove rope",
                "here --bag=tent stove rope",
                "--bag tent stove --fast --bag rope -- here",
                "here --bag tent --bag stove --bag rope"
            })
    void an_option_that_takes_many_takes_all_up_to_the_next_name(String line) {
        Given given = given(RIDE, line);
        assertEquals(List.of("tent", "stove", "rope"), given.values(BAG));
        assertEquals("here", given.word(FROM));
    }

    @Test
    void an_operand_that_takes_many_takes_all_that_are_left() {
        Operand stops = Operand.many("STOP", "Where to stop.");
        Usage tour = Usage.of("tour").taking(FROM, stops).with(FAST);
        assertEquals(List.of("a", "b", "c"), given(tour, "here a --fast b c").words(stops));
        assertEquals("STOP is missing.", refused(tour, "here"));
    }

    @Test
    void behind_two_dashes_all_are_operands() {
        Given given = given(RIDE, "-- --fast --help");
        assertEquals("--fast", given.word(FROM));
        assertEquals(Optional.of("--help"), given.optional(TO));
        assertFalse(given.has(FAST));
    }

    @Test
    void a_negative_number_is_a_value_and_a_dash_alone_an_operand() {
        Given given = given(RIDE, "--seat -5 -");
        assertEquals(Optional.of("-5"), given.value(SEAT));
        assertEquals("-", given.word(FROM));
    }

    @Test
    void a_value_may_be_empty_or_hold_an_equals_sign_or_begin_with_a_dash() {
        assertEquals(Optional.of(""), given(RIDE, "here --seat=").value(SEAT));
        assertEquals(Optional.of("a=b"), given(RIDE, "here --seat=a=b").value(SEAT));
        assertEquals(Optional.of("--fast"), given(RIDE, "here --seat=--fast").value(SEAT));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--help",
                "-h",
                "here there too many --help",
                "--bogus --help",
                "--seat --help",
                "--bag a -h b",
                "-help",
                "-fh"
            })
    void help_is_shown_wherever_it_is_asked_and_whatever_else_is_wrong(String line) {
        assertEquals(new Reading.HelpAsked(), read(RIDE, line));
        assertEquals(new Reading.HelpAsked(), read(PAID, line.replace("-fh", "-h")));
    }

    @ParameterizedTest
    @CsvSource({
        "here --slow, --slow",
        "here --slow=3, --slow",
        "here -x, -x",
        "here -x3, -x3",
        "here -fx, -x",
        "here --fas, --fas"
    })
    void an_option_that_does_not_exist_is_named(String line, String word) {
        assertEquals(new Reading.NoSuchOption(word), read(RIDE, line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--fast | FROM is missing.",
                "--bag here | FROM is missing; it comes before --bag.",
                "here there more again | \"more\" is one word too many.",
                "here --seat | --seat needs a value: --seat=NAME.",
                "here -s --fast | -s needs a value: -s=NAME.",
                "here -s -- there | -s needs a value: -s=NAME.",
                "here --bag --fast | --bag needs a value: --bag=BAG.",
                "here --fast=yes | --fast takes no value.",
                "here -f=yes | -f takes no value.",
                "here --no-light=yes | --no-light takes no value.",
                "here --fast -f | --fast is given twice.",
                "here -s a --seat=b | --seat is given twice.",
                "here --light --no-light | --[no-]light is given twice."
            })
    void what_a_command_does_not_take_gets_one_sentence(String line, String sentence) {
        assertEquals(sentence, refused(RIDE, line));
    }

    @Test
    void an_option_that_is_needed_must_be_there() {
        assertEquals("--class=N is missing.", refused(PAID, "here"));
        assertEquals("FROM is missing.", refused(PAID, ""));
        assertEquals(Optional.of("2"), given(PAID, "here --class 2").value(CLASS));
    }

    @Test
    void a_usage_knows_the_names_of_its_options() {
        assertEquals(List.of("--help", "--fast", "--light", "--no-light", "--seat", "--bag"), RIDE.names());
    }

    private static Reading read(Usage usage, String line) {
        return Reading.of(usage, line.isEmpty() ? List.of() : List.of(line.split(" ", -1)));
    }

    private static Given given(Usage usage, String line) {
        return assertInstanceOf(Given.class, read(usage, line));
    }

    private static String refused(Usage usage, String line) {
        return assertInstanceOf(Reading.Refused.class, read(usage, line)).sentence();
    }
}
