package buzzout.toml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Examples of what https://toml.io/en/v1.1.0 allows and forbids; {@code |} ends a line. */
class TomlTest {
    private static Toml.File read(String text) {
        return Toml.read(text.replace('|', '\n'));
    }

    private static List<String> slips(String text) {
        List<String> said = new ArrayList<>();
        for (Slip slip : read(text).slips()) {
            said.add(slip.at().line() + ":" + slip.at().column() + ": " + slip.message());
        }
        return said;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
                    a = 1 # so                             ~ {"a"=1.0}
                    a-1_B = 1|"b c" = 2|'d"' = 3           ~ {"a-1_B"=1.0, "b c"=2.0, "d\\""=3.0}
                    a.b = 1|a . "c" = 2                    ~ {"a"={"b"=1.0, "c"=2.0}}
                    a = 'C:\\n'                            ~ {"a"="C:\\\\n"}
                    a = \"""|x|y\"""                       ~ {"a"="x\\ny"}
                    a = \"""x \\  ||   y\"""               ~ {"a"="x y"}
                    a = \"""x\"""\""                       ~ {"a"="x\\"\\""}
                    a = '''|it's'''                        ~ {"a"="it's"}
                    a = true|b = false                     ~ {"a"=true, "b"=false}
                    a = [1, "b",|# so| [ ], ]              ~ {"a"=[1.0, "b", []]}
                    a = {b = 1, c.d = 2}                   ~ {"a"={"b"=1.0, "c"={"d"=2.0}}}
                    a = {|b = 1, # so|}                    ~ {"a"={"b"=1.0}}
                    [a.b]|c = 1|[a]|d = 2                  ~ {"a"={"b"={"c"=1.0}, "d"=2.0}}
                    [a]|b.c = 1|[a.b.d]|e = 2              ~ {"a"={"b"={"c"=1.0, "d"={"e"=2.0}}}}
                    [[a]]|b = 1|[[a]]|[a.c]|d = 2          ~ {"a"=[{"b"=1.0}, {"c"={"d"=2.0}}]}
                    """)
    void values_of_every_kind_are_read(String text, String written) {
        Toml.File file = read(text);
        assertEquals(List.of(), file.slips());
        assertEquals(written, Written.of(file.settings()));
    }

    @Test
    void escapes_stand_for_characters() {
        assertEquals(
                "{\"a\"=\"\b\t\\n\f\r\u001b\\\"\\\\A\u00e9\ud83d\ude80\"}",
                Written.of(read("a = \"\\b\\t\\n\\f\\r\\e\\\"\\\\\\x41\\u00e9\\U0001F680\"")
                        .settings()));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "+99, 99",
        "-17, -17",
        "1_000, 1000",
        "0xDEAD_beef, 3735928559",
        "0o755, 493",
        "0b1101, 13",
        "9223372036854775807, 9223372036854775807",
        "1.0, 1",
        "-0.01, -0.01",
        "5e+22, 5e22",
        "6.626E-34, 6.626e-34",
        "9_224.25_1, 9224.251",
        "1e06, 1e6",
        "inf, Infinity",
        "-inf, -Infinity",
        "+nan, NaN"
    })
    void numbers_are_what_they_say(String written, double number) {
        Value.Setting setting = read("a = " + written).settings().settings().get("a");
        assertEquals(new Value.Quantity(number, new Spot(1, 5)), setting == null ? null : setting.value());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "01",
                "1__0",
                "1_",
                "1.",
                ".5",
                "1.e2",
                "1e",
                "1_.5",
                "0x",
                "+0x1",
                "0x_1",
                "0xg",
                "0b2",
                "0b_1",
                "1_e5",
                "1e_5",
                "1.5e_3",
                "9223372036854775808",
                "1.2.3",
                "2D"
            })
    void what_is_no_number_is_told_as_such(String written) {
        assertEquals(
                List.of("1:5: not TOML: there is no number '" + written
                        + "'; write it without noughts before it and with digits on both sides of a point, or put text in"
                        + " quotes"),
                slips("a = " + written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"_1", "- 1", "+", "infinity", "True", "D0", "-x"})
    void what_begins_like_no_value_is_none(String written) {
        String first = slips("a = " + written).get(0);
        assertTrue(first.startsWith("1:5: not TOML: unexpected '"), first);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1979-05-27",
                "2024-02-29",
                "07:32:00",
                "07:32",
                "07:32:00.999",
                "1979-05-27T07:32:00",
                "1979-05-27 07:32",
                "1979-05-27t07:32:00.5z",
                "1979-05-27T00:32:00-07:00"
            })
    void dates_and_times_are_told_from_other_values(String written) {
        assertEquals(List.of(), slips("a = " + written + "  # so"));
        assertEquals("{\"a\"=moment}", Written.of(read("a = " + written).settings()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2023-02-29",
                "1979-13-01",
                "24:00:00",
                "07:60:00",
                "07:32:61",
                "1979-05-27T",
                "1979-05-27T07",
                "1979-05-27T07:32:00+24:00",
                "07:32:00Z",
                "1979-05-27x07:32:00",
                "1979-5-27"
            })
    void days_and_times_that_there_are_not_are_refused(String written) {
        assertEquals(
                List.of("1:5: not TOML: there is no date or time '" + written + "'; mend it"), slips("a = " + written));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a = 1|a = 2",
                "a = 1|a.b = 2",
                "[a]|b = 1|[a]",
                "a = {}|[a]",
                "a = {}|[a.b]",
                "a = {b = {}}|a.b.c = 1",
                "a = {b.c = 1, b = 2}",
                "a = []|[[a]]",
                "[[a]]|[a]",
                "[a]|[[a]]",
                "a.b = 1|[a]|c = 1",
                "[a.b.c]|[a]|b.c.d = 1",
                "[[a.b]]|[a]|b.c = 1"
            })
    void nothing_is_set_twice(String text) {
        List<String> slips = slips(text);
        assertEquals(1, slips.size(), slips::toString);
        assertTrue(
                slips.get(0).matches("\\d+:\\d+: \"[abc]\" is set twice, first on line 1; keep one"),
                () -> slips.get(0));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
                    a             ~ 1:2: not TOML: unexpected end of file, expected =; write a setting as name = value
                    = 1           ~ 1:1: not TOML: unexpected '=', expected a name; begin the line with a setting's name, a [table] or a # comment
                    a. = 1        ~ 1:4: not TOML: unexpected '=', expected a name; begin the line with a setting's name, a [table] or a # comment
                    a =           ~ 1:4: not TOML: unexpected end of file, expected a value; put one there, text in quotes, such as "D0"
                    a = 1 b = 2   ~ 1:7: not TOML: unexpected 'b', expected the end of the line; begin a new line
                    a = 'x        ~ 1:7: not TOML: unexpected end of file, expected ' or a character; close the text with ' on the same line
                    a = '''x|y    ~ 1:5: not TOML: a text that begins with ''' and does not end; close it with '''
                    a = "\\ud800" ~ 1:6: not TOML: invalid escape sequence '\\u'; write \\\\ for a backslash, or put the text in single quotes
                    a = [1 2]     ~ 1:8: not TOML: unexpected '2', expected a comma or ]; put commas between the values and close the bracket
                    a = [,]       ~ 1:6: not TOML: unexpected ',', expected a value; put one there, text in quotes, such as "D0"
                    a = {,}       ~ 1:6: not TOML: unexpected ',', expected a name; put a setting there, or close the brace
                    []            ~ 1:2: not TOML: unexpected ']', expected a name; write a table's name between the brackets
                    [a]]          ~ 1:4: not TOML: unexpected ']', expected the end of the line; begin a new line
                    [[a]          ~ 1:4: not TOML: unexpected ']', expected ]]; close the bracket
                    a.b.c.d.e.f.g.h.i = 1 ~ 1:17: not TOML: more than 8 lists and tables within each other; take some out
                    """)
    void a_slip_is_told_at_its_place(String text, String slip) {
        assertEquals(List.of(slip), slips(text));
    }

    @Test
    void a_text_and_all_its_characters_know_their_places() {
        Toml.File file = read("  a = \"\"\"|\ud83d\ude80x\\||   y\"\"\"");
        assertEquals(
                new Value.Setting(
                        new Spot(1, 3),
                        new Value.Text(
                                "\ud83d\ude80xy",
                                List.of(new Spot(2, 1), new Spot(2, 2), new Spot(4, 4)),
                                new Spot(1, 7))),
                file.settings().settings().get("a"));
    }

    @Test
    void what_follows_a_slip_is_read_all_the_same() {
        Toml.File file = read("a = |b = 2|c = [\"x|'y',|'z']|d = 4|e = [5,|f = 6");
        assertEquals("{\"b\"=2.0, \"d\"=4.0, \"f\"=6.0}", Written.of(file.settings()));
        assertEquals(3, file.slips().size(), () -> file.slips().toString());
        assertTrue(file.whole());
    }

    @Test
    void what_is_set_twice_is_told_once_and_the_first_counts() {
        Toml.File file = read("a = 1|a = [|2|]|b = {c = 3,|c = 4,|d = 5}|e = 6");
        assertEquals("{\"a\"=1.0, \"b\"={\"c\"=3.0, \"d\"=5.0}, \"e\"=6.0}", Written.of(file.settings()));
        assertEquals(
                List.of(
                        "\"a\" is set twice, first on line 1; keep one",
                        "\"c\" is set twice, first on line 5; keep one"),
                file.slips().stream().map(Slip::message).toList());
    }

    @Test
    void the_rest_of_a_text_with_a_slip_is_no_settings() {
        Toml.File file = read("a = \"\"\"|\\q|[rows]|\"\"\"|b = 1");
        assertEquals("{\"b\"=1.0}", Written.of(file.settings()));
        assertEquals(1, file.slips().size(), () -> file.slips().toString());
    }

    @Test
    void after_a_list_with_a_slip_the_next_setting_is_read_whatever_its_name() {
        Toml.File file = read("a = [1 2,|Esc, Q|A, S]|\"q\" = 3|1.b = 4|[-_]|x = [7 8|[c]|9 = 9");
        assertEquals("{\"-_\"={}, \"1\"={\"b\"=4.0}, \"c\"={\"9\"=9.0}, \"q\"=3.0}", Written.of(file.settings()));
        assertEquals(2, file.slips().size(), () -> file.slips().toString());
    }

    @Test
    void a_header_ends_a_list_that_was_not_closed() {
        Toml.File file = read("a = [1,|  2|[b]|c = 3");
        assertEquals("{\"b\"={\"c\"=3.0}}", Written.of(file.settings()));
        assertEquals(1, file.slips().size(), () -> file.slips().toString());
    }

    @Test
    void what_follows_a_header_that_cannot_be_read_belongs_nowhere() {
        Toml.File file = read("[a]|b = 1|[c|d = 2");
        assertEquals("{\"a\"={\"b\"=1.0}}", Written.of(file.settings()));
        assertFalse(file.whole());
    }
}
