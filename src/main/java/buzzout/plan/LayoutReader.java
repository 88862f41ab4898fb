package buzzout.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads how the keys lie: drawing lines, widths and gaps. */
final class LayoutReader {
    private static final int MOST_LINES = 64;
    private static final double NARROWEST = 0.25;
    private static final double WIDEST = 20;

    private final Set<String> keys;
    private final Problems problems;

    private LayoutReader(Set<String> keys, Problems problems) {
        this.keys = keys;
        this.problems = problems;
    }

    /**
     * The place of each key, in reading order.
     *
     * @param rows the drawing's lines where the file names none
     */
    static Map<String, Place> read(
            Optional<Settings> layout, List<NetDraft> rows, Set<String> keys, Problems problems) {
        LayoutReader reader = new LayoutReader(keys, problems);
        Optional<Settings> known = layout.map(table -> table.known("lines", "widths", "gaps"));
        List<List<Word>> lines = known.filter(table -> table.has("lines"))
                .map(table -> reader.lines(table))
                .orElseGet(() -> likeRows(rows));
        Map<String, Double> widths = known.flatMap(table -> table.table("widths", "a table, such as { Space = 2 }"))
                .map(table -> reader.sizes(table, "width", NARROWEST))
                .orElse(Map.of());
        Map<String, Double> gaps = known.flatMap(table -> table.table("gaps", "a table, such as { Space = 0.5 }"))
                .map(table -> reader.sizes(table, "gap", 0))
                .orElse(Map.of());
        return places(lines, widths, gaps);
    }

    private static List<List<Word>> likeRows(List<NetDraft> rows) {
        List<List<Word>> lines = new ArrayList<>();
        rows.forEach(row -> lines.add(row.joints()));
        return lines;
    }

    private List<List<Word>> lines(Settings layout) {
        List<List<Word>> lines = new ArrayList<>();
        layout.texts("lines").forEach(line -> lines.add(line.words()));
        if (lines.size() > MOST_LINES) {
            problems.unread(
                    layout.at("lines"), "the layout has " + lines.size() + " lines; leave " + MOST_LINES + " at most");
            return List.of();
        }
        Map<String, Word> seen = new LinkedHashMap<>();
        lines.forEach(line -> line.forEach(key -> check(key, seen)));
        for (String key : keys) {
            if (!seen.containsKey(key)) {
                problems.lack(
                        layout.at("lines"),
                        "key " + Visible.quoted(key) + " is on no line of the layout; add it to one");
            }
        }
        return lines;
    }

    private void check(Word key, Map<String, Word> seen) {
        if (!keys.contains(key.text())) {
            unknown(key);
            problems.nearest(key.text(), keys).ifPresent(meant -> seen.putIfAbsent(meant, key));
        } else if (seen.putIfAbsent(key.text(), key) != null) {
            problems.error(key.at(), "key " + key.quoted() + " is twice in the layout's lines; take one out");
        }
    }

    private void unknown(Word key) {
        problems.lack(
                key.at(),
                "key " + key.quoted() + " is on no row or column; "
                        + problems.hint(key.text(), keys, "add it to both or take it out here"));
    }

    private Map<String, Double> sizes(Settings table, String what, double least) {
        Map<String, Double> sizes = new LinkedHashMap<>();
        for (Word key : table.names()) {
            if (!keys.contains(key.text())) {
                unknown(key);
            }
            OptionalDouble size = table.number(key.text());
            size.ifPresent(value -> {
                // The other way round, a not-a-number would pass.
                if (!(value >= least && value <= WIDEST)) {
                    problems.error(
                            table.at(key.text()),
                            what + " of " + key.quoted() + " must be " + plain(least) + " to " + plain(WIDEST)
                                    + " key pitches");
                }
                sizes.put(key.text(), value);
            });
        }
        return sizes;
    }

    private static Map<String, Place> places(
            List<List<Word>> lines, Map<String, Double> widths, Map<String, Double> gaps) {
        Map<String, Place> places = new LinkedHashMap<>();
        for (int y = 0; y < lines.size(); y++) {
            double x = 0;
            for (Word key : lines.get(y)) {
                double width = widths.getOrDefault(key.text(), 1.0);
                x += gaps.getOrDefault(key.text(), 0.0);
                places.putIfAbsent(key.text(), new Place(x, y, width));
                x += width;
            }
        }
        return places;
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }
}
