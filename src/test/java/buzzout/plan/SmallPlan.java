package buzzout.plan;

import java.util.List;

/** Two rows by two columns, to change in one place and read again. */
final class SmallPlan {
    static final String TEXT = """
            name = "T"
            controller = "ATmega32U4"
            [rows]
            R1 = { pin = "D0", keys = "A B" }
            R2 = { pin = "D1", keys = "C D" }
            [columns]
            C1 = { pin = "D2", keys = "A C" }
            C2 = { pin = "D3", keys = "B D" }
            """;

    private SmallPlan() {}

    static PlanFile with(String part, String instead) {
        if (!TEXT.contains(part)) {
            throw new IllegalArgumentException("the small plan does not say " + part);
        }
        return PlanReader.read(TEXT.replace(part, instead), "t.toml");
    }

    static Plan planWith(String part, String instead) {
        PlanFile file = with(part, instead);
        return file.plan().orElseThrow(() -> new AssertionError(said(file)));
    }

    static List<String> said(PlanFile file) {
        return file.problems().stream().map(Problem::toString).toList();
    }
}
