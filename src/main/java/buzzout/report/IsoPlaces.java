package buzzout.report;

import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Places of keys in the manner of ISO/IEC 9995-1: a row letter, from A at the space bar to E at the digits, and a column
 * of two digits, 01 at the digit 1; the letter E of a usual keyboard sits at D03.
 *
 * <p>A line of keys is told by the labels on it, where three or more of them have usual places that follow each other and no
 * more of them have others; its other keys are counted from there. Labels are taken as on a US keyboard. A line below such a line is the next row where its
 * keys stand under the other's. Everything else stays untold.
 */
final class IsoPlaces {
    /** What the usual keys are labelled, from column 01 on. */
    private static final Map<Character, String> USUAL =
            Map.of('E', "1234567890-=", 'D', "qwertyuiop[]", 'C', "asdfghjkl;'", 'B', "zxcvbnm,./");

    /** A panel's keys A and B are no letters of a row. */
    private static final int FEWEST = 3;

    private static final int MOST_COLUMN = 99;
    private static final double LEVEL = 1e-6;

    /** A row and the column of a line's first key. */
    record Start(char row, int column) {}

    private IsoPlaces() {}

    /** The places that can be told, by the keys' indices. */
    static Map<Integer, String> of(Plan plan) {
        List<List<Key>> lines = lines(plan);
        Map<Integer, Start> told = new HashMap<>();
        for (int line = 0; line < lines.size(); line++) {
            Optional<Start> start = start(lines.get(line));
            if (start.isPresent()) {
                told.put(line, start.get());
            }
        }
        if (!descends(told)) {
            return Map.of();
        }
        Map<Integer, String> places = new HashMap<>();
        told.forEach((line, start) -> count(lines.get(line), start, places));
        for (int line = 1; line < lines.size(); line++) {
            Start above = told.get(line - 1);
            if (above != null && above.row() == 'B' && !told.containsKey(line)) {
                alignBelow(lines.get(line), lines.get(line - 1), places);
            }
        }
        return places;
    }

    private static List<List<Key>> lines(Plan plan) {
        Map<Double, List<Key>> byHeight = new TreeMap<>();
        plan.keys()
                .forEach(key -> byHeight.computeIfAbsent(key.place().y(), y -> new ArrayList<>())
                        .add(key));
        byHeight.values()
                .forEach(line ->
                        line.sort(Comparator.comparingDouble(key -> key.place().x())));
        return List.copyOf(byHeight.values());
    }

    private static Optional<Start> start(List<Key> line) {
        Map<Start, Integer> votes = new HashMap<>();
        int voters = 0;
        for (int at = 0; at < line.size(); at++) {
            Optional<Start> usual = usual(line.get(at).name());
            if (usual.isPresent()) {
                voters++;
                votes.merge(new Start(usual.get().row(), usual.get().column() - at), 1, Integer::sum);
            }
        }
        int all = voters;
        return votes.entrySet().stream()
                .filter(vote -> vote.getValue() >= FEWEST && 2 * vote.getValue() > all)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** The usual place of a label. */
    static Optional<Start> usual(String label) {
        if (label.codePointCount(0, label.length()) != 1) {
            return Optional.empty();
        }
        char letter = Character.toLowerCase(label.charAt(0));
        return USUAL.entrySet().stream()
                .filter(row -> row.getValue().indexOf(letter) >= 0)
                .map(row -> new Start(row.getKey(), row.getValue().indexOf(letter) + 1))
                .findFirst();
    }

    /** Whether no row is told twice and all follow each other from top to bottom, as on no block of digits they do. */
    private static boolean descends(Map<Integer, Start> told) {
        List<Character> rows =
                new TreeMap<>(told).values().stream().map(Start::row).toList();
        List<Character> sorted = rows.stream().sorted(Comparator.reverseOrder()).toList();
        return rows.equals(sorted) && new HashSet<>(rows).size() == rows.size();
    }

    private static void count(List<Key> line, Start start, Map<Integer, String> places) {
        for (int at = 0; at < line.size(); at++) {
            put(line.get(at), start.row(), start.column() + at, places);
        }
    }

    private static void alignBelow(List<Key> line, List<Key> above, Map<Integer, String> places) {
        for (Key key : line) {
            above.stream()
                    .filter(other -> Math.abs(other.place().x() - key.place().x()) < LEVEL)
                    .map(other -> places.get(other.index()))
                    .filter(place -> place != null)
                    .findFirst()
                    .ifPresent(place -> put(key, 'A', Integer.parseInt(place.substring(1)), places));
        }
    }

    private static void put(Key key, char row, int column, Map<Integer, String> places) {
        if (column >= 0 && column <= MOST_COLUMN) {
            places.put(key.index(), "%c%02d".formatted(row, column));
        }
    }
}
