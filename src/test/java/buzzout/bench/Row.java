package buzzout.bench;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * One line of the table: what was measured, and beside it what it may be at most.
 *
 * @param limit absent where nobody has set one
 */
record Row(String what, double measured, String unit, OptionalDouble limit) {
    static Row of(String what, double measured, String unit) {
        return new Row(what, measured, unit, OptionalDouble.empty());
    }

    static Row of(String what, double measured, String unit, double limit) {
        return new Row(what, measured, unit, OptionalDouble.of(limit));
    }

    private static final String FORM = "| %-66s | %12s %-9s | %8s | %6s | %-6s |%n";

    static String table(List<Row> rows) {
        StringBuilder table = new StringBuilder(FORM.formatted("what", "measured", "", "limit", "ratio", "")
                + FORM.formatted("---", "---:", "", "---:", "---:", "---"));
        rows.forEach(row -> table.append(row.line()));
        return table.toString();
    }

    private String line() {
        if (limit.isEmpty()) {
            return FORM.formatted(what, number(measured), unit, "", "", "");
        }
        double ratio = measured / limit.getAsDouble();
        return FORM.formatted(
                what,
                number(measured),
                unit,
                number(limit.getAsDouble()),
                number(ratio),
                ratio <= 1 ? "met" : "missed");
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, value >= 100 ? "%,.0f" : value >= 10 ? "%.1f" : "%.2f", value);
    }
}
