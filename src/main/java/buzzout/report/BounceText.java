package buzzout.report;

import buzzout.plan.Plan;
import buzzout.session.Bounces;
import buzzout.session.Confidence;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** How long contacts bounced, as plain lines of at most 80 columns. */
public final class BounceText {
    private static final int BAR_COLUMNS = 40;

    private BounceText() {}

    /** All of it: what it comes to, the histogram, the keys with the longest bounce. */
    public static String of(Plan plan, Bounces bounces, int mostKeys) {
        List<String> lines = new ArrayList<>(List.of(sum(plan, bounces)));
        if (bounces.presses() > 0) {
            lines.addAll(histogram(bounces, BAR_COLUMNS));
            lines.addAll(table(plan, bounces, mostKeys));
            lines.addAll(proof(bounces));
        }
        return String.join("\n", lines) + "\n";
    }

    /** One sentence. */
    public static String sum(Plan plan, Bounces bounces) {
        if (bounces.presses() == 0) {
            return "Bounce: no press has been timed yet.";
        }
        Bounces.OfKey worst = bounces.keys().get(0);
        return "Bounce: " + counted(bounces.presses(), "press") + " of "
                + counted(bounces.keys().size(), "key")
                + " timed, limit " + millis(bounces.limitMicros()) + " ms; longest " + millis(worst.longest())
                + " ms, of " + plan.keys().get(worst.key()).spoken() + ".";
    }

    /** The keys that bounced too long, one sentence each. */
    public static List<String> over(Plan plan, Bounces bounces) {
        List<String> over = new ArrayList<>();
        for (Bounces.OfKey key : bounces.overLimit()) {
            over.add(plan.keys().get(key.key()).spoken() + " bounced up to " + millis(key.longest())
                    + " ms, over the limit of " + millis(bounces.limitMicros()) + " ms, in " + key.over() + " of "
                    + counted(key.presses(), "press"));
        }
        return Collections.unmodifiableList(over);
    }

    /** One line for each bar. */
    public static List<String> histogram(Bounces bounces, int columns) {
        int most = Math.max(
                1,
                bounces.histogram().stream()
                        .mapToInt(Bounces.Bar::presses)
                        .max()
                        .orElse(1));
        return bounces.histogram().stream()
                .map(bar -> {
                    int length = (bar.presses() * columns + most - 1) / most;
                    return String.format(Locale.ROOT, "%13s ms  ", range(bar))
                            + "#".repeat(length)
                            + (length > 0 ? " " : "")
                            + bar.presses()
                            + (bar.over() ? "  over" : "");
                })
                .toList();
    }

    /** A heading, and one line for each of the keys with the longest bounce. */
    public static List<String> table(Plan plan, Bounces bounces, int mostKeys) {
        List<String> lines = new ArrayList<>();
        lines.add(String.format("  %-8s %7s %9s %10s", "key", "presses", "pressing", "letting go"));
        bounces.keys().stream()
                .limit(mostKeys)
                .forEach(key -> lines.add(String.format(
                        Locale.ROOT,
                        "  %-8s %7d %6s ms %7s ms%s",
                        plan.keys().get(key.key()).name(),
                        key.presses(),
                        millis(key.longestPressing()),
                        millis(key.longestLettingGo()),
                        key.over() > 0 ? "  over in " + key.over() : "")));
        if (bounces.keys().size() > mostKeys) {
            lines.add("  and " + counted(bounces.keys().size() - mostKeys, "key") + " that bounced less");
        }
        return lines;
    }

    /** What so many presses prove. */
    public static List<String> proof(Bounces bounces) {
        int fewest =
                bounces.keys().stream().mapToInt(Bounces.OfKey::presses).min().orElse(0);
        return List.of(
                fewest + (fewest == 1 ? " press" : " presses") + " of a key within the limit "
                        + (fewest == 1 ? "leaves" : "leave") + " it possible that up to "
                        + percent(Confidence.mostFailing(fewest)) + " of its presses are not (95 %).",
                "To catch one bad press in ten takes " + Confidence.pressesToSee(0.1) + " presses of a key, one in"
                        + " twenty " + Confidence.pressesToSee(0.05) + ".");
    }

    private static String range(Bounces.Bar bar) {
        return bar.toMicros() == Long.MAX_VALUE
                ? "over " + shortMillis(bar.fromMicros())
                : shortMillis(bar.fromMicros()) + " to " + shortMillis(bar.toMicros());
    }

    private static String shortMillis(long micros) {
        return micros % 1000 == 0 ? String.valueOf(micros / 1000) : millis(micros);
    }

    private static String millis(long micros) {
        return String.format(Locale.ROOT, "%.1f", micros / 1000.0);
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }

    private static String counted(int count, String word) {
        return count + " " + word + (count == 1 ? "" : word.endsWith("s") ? "es" : "s");
    }
}
