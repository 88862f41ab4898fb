package buzzout.plan;

import buzzout.toml.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A plan's own text with some values changed and everything else kept: comments, colours, order, spacing. */
public final class CorrectedText {
    private CorrectedText() {}

    private record Change(Spot at, String value) {}

    /**
     * The text with other pins and, where it differs, the other stripe.
     *
     * @param text of a plan without errors
     * @param pins the new pin of each net named
     * @return nothing where a value is not written as plain text in quotes on one line
     */
    public static Optional<String> of(String text, Map<String, String> pins, NetKind stripe) {
        Problems problems = new Problems("plan");
        Optional<Settings> file = TomlText.parse(text, problems);
        Optional<Plan> plan = PlanReader.read(text, "plan").plan();
        if (file.isEmpty() || plan.isEmpty()) {
            return Optional.empty();
        }
        List<Change> changes = new ArrayList<>();
        for (String table : List.of("rows", "columns")) {
            file.get()
                    .table(table, "a table")
                    .ifPresent(nets -> pins.forEach((name, pin) ->
                            nets.table(name, "a net").ifPresent(net -> changes.add(new Change(net.at("pin"), pin)))));
        }
        boolean turned = stripe != plan.get().stripe();
        if (turned && file.get().has("stripe")) {
            changes.add(new Change(file.get().at("stripe"), stripe.word()));
        }
        Optional<String> changed = changed(text, changes);
        return turned && !file.get().has("stripe")
                ? changed.map(rest -> "stripe = \"" + stripe.word() + "\"\n" + rest)
                : changed;
    }

    private static Optional<String> changed(String text, List<Change> changes) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        // From the end, so that the places of those before stay.
        changes.sort(Comparator.comparingInt((Change change) -> change.at().line())
                .thenComparingInt(change -> change.at().column())
                .reversed());
        for (Change change : changes) {
            int index = change.at().line() - 1;
            String line = lines.get(index);
            int start = line.offsetByCodePoints(0, change.at().column() - 1);
            char quote = line.charAt(start);
            int end = line.indexOf(quote, start + 1);
            boolean plain = (quote == '"' || quote == '\'')
                    && end > start + 1
                    && line.substring(start, end).indexOf('\\') < 0;
            if (!plain) {
                return Optional.empty();
            }
            lines.set(index, line.substring(0, start + 1) + change.value() + line.substring(end));
        }
        return Optional.of(String.join("\n", lines));
    }
}
