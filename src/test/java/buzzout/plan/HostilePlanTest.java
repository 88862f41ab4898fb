package buzzout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a file holds, it is answered with problems that stand within it and can be printed. */
@Timeout(120) // against hanging only
class HostilePlanTest {
    private static final int MIB = 1 << 20;

    private static final String RICH = ExamplePlan.quaysideText()
            + "lines = [\"Esc Q W E R T Y U I O P Back\"]\ngaps.Y = 0.5\n[rows.R5]\nlead = '\\'\nbranches = [\"Q \\u0041\"]\n";

    private static final List<String> BAD = Stream.of(
                    "\0",
                    "\u001b",
                    "\u202e",
                    "\ufeff",
                    "\ud800",
                    "\udc00",
                    "\ud83d\ude80",
                    "\r",
                    "\n",
                    "\"",
                    "'",
                    "\\",
                    "[",
                    "]",
                    "{",
                    "}",
                    "=",
                    ",",
                    ".",
                    "#",
                    "\t",
                    "\u00a0",
                    "\u0130",
                    "9",
                    "-",
                    "e",
                    "inf",
                    "\"\"\"")
            .toList();

    private static PlanFile read(String text) {
        PlanFile file = PlanReader.read(text, "t.toml");
        int lines = text.split("\n", -1).length;
        boolean errors = false;
        for (Problem problem : file.problems()) {
            assertTrue(problem.line() >= 1 && problem.line() <= lines, problem::toString);
            assertTrue(problem.column() >= 1, problem::toString);
            assertTrue(
                    problem.toString().codePoints().allMatch(point -> point == ' ' || Visible.prints(point)),
                    problem::toString);
            errors |= problem.severity() == Problem.Severity.ERROR;
        }
        assertEquals(!errors, file.plan().isPresent(), () -> String.valueOf(file.problems()));
        return file;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void one_bad_piece_anywhere_never_throws(int seed) {
        Random random = new Random(seed);
        int told = 0;
        for (int i = 0; i < 200; i++) {
            int at = random.nextInt(RICH.length());
            String bad = BAD.get(random.nextInt(BAD.size()));
            String text = RICH.substring(0, at) + bad + RICH.substring(random.nextBoolean() ? at : at + 1);
            told += read(text).problems().size();
        }
        assertTrue(told > 200, "seed " + seed + ": bad pieces were hardly noticed");
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 6})
    void a_text_cut_off_or_shuffled_never_throws(int seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            read(RICH.substring(0, random.nextInt(RICH.length())));
            List<String> lines = RICH.lines().collect(Collectors.toList());
            Collections.shuffle(lines, random);
            read(String.join("\n", lines));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {7, 8})
    void random_characters_never_throw(int seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            String text = random.ints(random.nextInt(200), 0, random.nextBoolean() ? 0x80 : 0x3000)
                    .mapToObj(Character::toString)
                    .collect(Collectors.joining());
            read(text);
        }
    }

    @TestFactory
    Stream<DynamicTest> a_full_mebibyte_is_answered() {
        return Stream.of(
                        "[rows]\n" + filled(i -> "R" + i + " = {}\n"),
                        "[rows]\n" + filled(i -> "R" + i + " = { pin = \"D0\", keys = \"A\" }\n"),
                        "[rows]\nR1 = { keys = \"" + filled(i -> "K" + i + " "),
                        "[rows]\nR1 = { keys = \"" + filled(i -> "K" + i + " ") + "\" }",
                        "[rows]\nR1 = { keys = [" + filled(i -> "\"K\",") + "] }",
                        "[rows]\nR1 = { keys = \"" + words(4000) + "\", jumpers = [" + filled(i -> "\"K1 K9\",")
                                + "] }",
                        "[rows]\nR1 = { keys = \"" + words(4000) + "\", branches = [" + filled(i -> "\"K1 K2\",")
                                + "] }",
                        "[rows]\nR1 = { keys = \"" + words(4000) + "\" }\n[layout]\nlines = [\""
                                + filled(i -> "J" + i + " ") + "\"]",
                        "[rows]\nR1 = { keys = \"" + words(4000) + "\" }\n[layout.widths]\n"
                                + filled(i -> "J" + i + "=0\n"),
                        "[layout]\nlines = [" + filled(i -> "\"\",") + "]",
                        filled(i -> "[a]\n"),
                        filled(i -> "a" + i + "=1\n"),
                        filled(i -> "["),
                        "a = " + filled(i -> "["),
                        "a = " + filled(i -> "{a="),
                        filled(i -> "a."),
                        filled(i -> "\""),
                        filled(i -> "\0"),
                        filled(i -> "\n"),
                        " \t\n".repeat(4900) + "=",
                        ("\n".repeat(2000) + "a=1\n").repeat(2),
                        ("# c\n".repeat(2000) + "=\n").repeat(2),
                        "a=\"\n".repeat(4900),
                        "a=[\n".repeat(4900),
                        "\0\n".repeat(4900),
                        "name = \"" + filled(i -> "\\u202e") + "\"")
                .map(text -> DynamicTest.dynamicTest(
                        text.substring(0, Math.min(40, text.length())).replaceAll("[^ -~]", "."),
                        () -> assertFalse(read(text).problems().isEmpty())));
    }

    private static String words(int many) {
        return IntStream.range(0, many).mapToObj(i -> "K" + i).collect(Collectors.joining(" "));
    }

    /** Pieces to nearly a mebibyte, with room for what stands round them. */
    private static String filled(IntFunction<String> piece) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; text.length() < MIB - 30_000; i++) {
            text.append(piece.apply(i));
        }
        return text.toString();
    }

    @Test
    void a_longer_file_is_refused_unread() {
        PlanFile file = read("#".repeat(MIB + 1));
        assertEquals(
                List.of("t.toml:1:1: the file is longer than a plan can be, 1 MiB; give the path of a plan"),
                SmallPlan.said(file));
    }

    @Test
    void more_lines_than_a_plan_can_have_are_refused_unread() {
        assertEquals(
                List.of("t.toml:5001:1: the file has more lines than a plan can have, 5000; give the path of a plan"),
                SmallPlan.said(read("a=1\n".repeat(5000))));
    }

    @Test
    void more_keys_than_any_board_has_are_refused() {
        PlanFile file = read("[rows]\nR1 = { keys = \"" + words(8193) + "\" }");
        assertTrue(SmallPlan.said(file).contains("t.toml:1:1: the plan has more than 4096 keys; split the board"));
    }

    @Test
    void a_file_that_is_no_text_is_answered_shortly() {
        PlanFile file = read("\u007fELF\0".repeat(1000).replace("F", "F\n"));
        assertEquals(21, file.problems().size());
        assertEquals(
                "981 more places are not TOML; mend the ones named and check again",
                file.problems().get(20).message());
    }

    @Test
    void a_stray_character_in_a_comment_within_braces_is_told_at_its_place() {
        String plan = ExamplePlan.quaysideText();
        String spoilt = plan.replace("\"D1\",", "\"D1\", # second\u0002");
        assertEquals(
                List.of("t.toml:9:28: not TOML: a character that does not print, '\\u0002'; take it out"),
                SmallPlan.said(read(spoilt)));
    }

    @Test
    void a_file_name_cannot_move_the_cursor() {
        assertEquals(
                "a\\u001b[2J:1:1: the plan has no name; add one at the top, such as name = \"Quayside 46\"",
                PlanReader.read("", "a\u001b[2J").problems().get(0).toString());
    }
}
