package buzzout.plan;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Checks that each key is on one row and one column, and alone where they cross. */
final class KeyChecks {
    private final Problems problems;

    private KeyChecks(Problems problems) {
        this.problems = problems;
    }

    /** A key's joint on a net. */
    private record Seat(Word key, NetDraft net) {}

    static void check(List<NetDraft> nets, Problems problems) {
        KeyChecks checks = new KeyChecks(problems);
        Map<String, Seat> rows = checks.seats(nets, NetKind.ROW);
        Map<String, Seat> columns = checks.seats(nets, NetKind.COLUMN);
        checks.lacks(rows, columns);
        checks.crossings(rows, columns);
    }

    private Map<String, Seat> seats(List<NetDraft> nets, NetKind kind) {
        Map<String, Seat> seats = new LinkedHashMap<>();
        for (NetDraft net : nets) {
            for (Word key : net.kind() == kind ? net.joints() : List.<Word>of()) {
                Seat first = seats.putIfAbsent(key.text(), new Seat(key, net));
                if (first != null) {
                    problems.error(
                            key.at(),
                            "key " + key.quoted() + " is on two " + kind.word() + "s, "
                                    + first.net().name() + " and " + net.name() + "; each key has one");
                }
            }
        }
        return seats;
    }

    private void lacks(Map<String, Seat> rows, Map<String, Seat> columns) {
        Map<String, Seat> columnless = without(rows, columns);
        Map<String, Seat> rowless = without(columns, rows);
        for (Seat seat : rowless.values()) {
            // One slip of the pen gives two such keys: it is told once.
            String hint = problems.nearest(seat.key().text(), columnless.keySet())
                    .map(columnless::remove)
                    .map(twin -> "did you mean " + twin.key().quoted() + ", which is on no column?")
                    .orElse("add it to one");
            problems.lack(seat.key().at(), lack(seat, NetKind.ROW) + hint);
        }
        for (Seat seat : columnless.values()) {
            problems.lack(seat.key().at(), lack(seat, NetKind.COLUMN) + "add it to one");
        }
    }

    private static Map<String, Seat> without(Map<String, Seat> these, Map<String, Seat> those) {
        return these.entrySet().stream()
                .filter(entry -> !those.containsKey(entry.getKey()))
                .collect(Collectors.toMap(
                        Map.Entry::getKey, Map.Entry::getValue, (one, other) -> one, LinkedHashMap::new));
    }

    private static String lack(Seat seat, NetKind missing) {
        return "key " + seat.key().quoted() + " is on " + seat.net().name() + " but on no " + missing.word() + "; ";
    }

    private void crossings(Map<String, Seat> rows, Map<String, Seat> columns) {
        Map<List<String>, Word> taken = new HashMap<>();
        rows.forEach((name, row) -> {
            Seat column = columns.get(name);
            if (column == null) {
                return;
            }
            Word first =
                    taken.putIfAbsent(List.of(row.net().name(), column.net().name()), row.key());
            if (first != null) {
                problems.error(
                        row.key().at(),
                        "keys " + first.quoted() + " and " + row.key().quoted() + " are both where "
                                + row.net().name() + " and " + column.net().name()
                                + " cross; move one to another row or column");
            }
        });
    }
}
