package buzzout.toml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.ExamplePlan;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;

/** Of spoiled texts this reader and tomlj, made by others from the grammar of the standard, read the same. */
class OtherReaderTest {
    private static final int TEXTS = 1500;

    private static final List<String> LINES = List.of(
            "a = 1\n",
            "a.b = 1\n",
            "b.c = 2\n",
            "a = {}\n",
            "a = []\n",
            "[a]\n",
            "[a.b]\n",
            "[a.b.c]\n",
            "[[a]]\n",
            "[[a.b]]\n",
            "d = { e = 1, f.g = [1, 2] }\n",
            "n = 1_000\n",
            "n = -1_5.2_5e+1_0\n",
            "n = [0xa_b, 0b1_0, 0o7_1]\n",
            "h = [\"i\", 'j',\n  { k = true }]\n",
            "l = \"\"\"m\n  n\"\"\"\n");

    private static final List<String> PIECES = List.of(
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
            "\n",
            "\r\n",
            "\"\"\"",
            "'''",
            "[[",
            "]]",
            "a",
            "0",
            "_",
            "-",
            "+",
            "e5",
            ".5",
            "0x1f",
            "0b1",
            "inf",
            "nan",
            "true",
            "1979-05-27",
            "07:32:00",
            "\\u00e9",
            "\\x41",
            "\u00e9",
            "\ud83d\ude80",
            "\u007f");

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void spoiled_texts_are_read_or_refused_alike(int seed) {
        Random random = new Random(seed);
        int read = 0;
        int refused = 0;
        for (int i = 0; i < TEXTS; i++) {
            String text = text(random);
            TomlParseResult other;
            try {
                other = Toml.parse(text);
            } catch (RuntimeException | AssertionError stumbled) {
                continue;
            }
            buzzout.toml.Toml.File ours = buzzout.toml.Toml.read(text);
            assertEquals(
                    other.hasErrors(),
                    !ours.slips().isEmpty(),
                    () -> "seed " + seed + ": " + text + ours.slips() + other.errors());
            if (other.hasErrors()) {
                refused++;
            } else {
                read++;
                assertEquals(Written.of(other), Written.of(ours.settings()), () -> "seed " + seed + ": " + text);
            }
        }
        assertTrue(
                read > TEXTS / 10 && refused > TEXTS / 4,
                "seed " + seed + ": " + read + " read, " + refused + " refused");
    }

    private static String text(Random random) {
        StringBuilder text = new StringBuilder();
        if (random.nextBoolean()) {
            List<String> plan = ExamplePlan.quaysideText().lines().toList();
            int from = random.nextInt(plan.size() - 5);
            text.append(String.join("\n", plan.subList(from, from + 5))).append('\n');
        }
        for (int lines = random.nextInt(4); lines > 0; lines--) {
            text.append(LINES.get(random.nextInt(LINES.size())));
        }
        for (int pieces = random.nextInt(3); pieces > 0; pieces--) {
            int at = random.nextInt(text.length() + 1);
            text.replace(
                    at, Math.min(text.length(), at + random.nextInt(2)), PIECES.get(random.nextInt(PIECES.size())));
        }
        return text.toString();
    }
}
