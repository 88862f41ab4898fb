package buzzout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every problem with its exact place and words: the table is in {@code problems.txt}. */
class PlanProblemsTest {
    private record Case(String part, String instead, List<String> said) {
        static Case of(String block) {
            return new Case(
                    String.join("\n", after(block, "- ")),
                    String.join("\n", after(block, "+ ")),
                    block.lines()
                            .filter(line -> !line.startsWith("- ") && !line.startsWith("+ "))
                            .toList());
        }

        private static List<String> after(String block, String mark) {
            return block.lines()
                    .filter(line -> line.startsWith(mark))
                    .map(line -> line.substring(mark.length()))
                    .toList();
        }

        void check() {
            PlanFile file = SmallPlan.with(part, instead);
            List<String> now = new ArrayList<>();
            file.plan().ifPresent(plan -> now.add("(plan)"));
            now.addAll(SmallPlan.said(file));
            assertEquals(said, now);
        }
    }

    private static List<Case> cases() throws IOException {
        try (InputStream in = Objects.requireNonNull(PlanProblemsTest.class.getResourceAsStream("problems.txt"))) {
            String table = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            List<Case> cases = Stream.of(table.split("\n\n", -1))
                    .filter(block -> !block.startsWith("#"))
                    .map(Case::of)
                    .toList();
            assertTrue(cases.size() > 80, "only " + cases.size() + " cases were read");
            return cases;
        }
    }

    @TestFactory
    Stream<DynamicTest> a_change_to_the_small_plan_is_told_as_the_table_says() throws IOException {
        return cases().stream()
                .map(each -> DynamicTest.dynamicTest(each.part() + " -> " + each.instead(), each::check));
    }

    @Test
    void the_table_holds_in_a_locale_with_other_letter_cases() throws IOException {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag("tr-TR"));
        try {
            cases().forEach(Case::check);
            assertEquals(
                    List.of(), PlanReader.read(ExamplePlan.quaysideText(), "q").problems());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void a_problem_names_its_file_line_and_column() {
        assertEquals(
                "quayside.toml:14:9: key \"Esc\" is on two columns, C1 and C4; each key has one",
                new Problem(
                                "quayside.toml",
                                14,
                                9,
                                Problem.Severity.ERROR,
                                "key \"Esc\" is on two columns, C1 and C4; each key has one")
                        .toString());
    }
}
