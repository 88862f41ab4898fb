package buzzout.plan;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Checks that each key is on one row and one column, and alone where they cross. */
final class KeyChecks {
    private final Problems problems;

    private KeyChecks(Problems problems) {
        this.problems = problems;
    }

    /** A key's joint on a net. */
    private record Seat(Word key, NetDraft net) {
        /** Whether the name itself will not do, which has been told. */
        boolean isFaulty() {
            return KeyName.fault(key.text()).isPresent();
        }
    }

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
        if (rows.isEmpty() || columns.isEmpty()) {
            return; // which has been told, and once is enough
        }
        Map<String, Seat> columnless = without(rows, columns);
        Map<String, Seat> rowless = without(columns, rows);
        for (Seat rowlessSeat : rowless.values()) {
            // One slip of the pen makes two such keys: it is told once.
            Optional<Seat> twin = problems.nearest(rowlessSeat.key().text(), columnless.keySet())
                    .map(columnless::remove);
            if (twin.filter(Seat::isFaulty).isEmpty()) {
                String todo = twin.map(meant -> "did you mean " + meant.key().quoted() + ", which is on no column?")
                        .orElse("add it to one");
                lack(rowlessSeat, NetKind.ROW, todo);
            }
        }
        columnless.values().forEach(seat -> lack(seat, NetKind.COLUMN, "add it to one"));
    }

    private void lack(Seat seat, NetKind missing, String todo) {
        if (!seat.isFaulty()) {
            problems.lack(
                    seat.key().at(),
                    "key " + seat.key().quoted() + " is on " + seat.net().name() + " but on no " + missing.word() + "; "
                            + todo);
        }
    }

    private static Map<String, Seat> without(Map<String, Seat> these, Map<String, Seat> those) {
        Map<String, Seat> without = new LinkedHashMap<>(these);
        without.keySet().removeAll(those.keySet());
        return without;
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
