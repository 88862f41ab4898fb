package buzzout.report;

import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.session.KeyState;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * What the firmware that comes next has to know of a board.
 *
 * @param rows from top to bottom as the plan lists them; a row's number is its place in this list, from 0
 * @param columns the same from left to right
 * @param keys in reading order
 * @param proof what a session says of it, where there is one
 */
public record PinTable(Plan plan, List<Lead> rows, List<Lead> columns, List<Seat> keys, Optional<Proof> proof) {
    /** @param proven whether a key of this net answered as planned */
    record Lead(Net net, boolean proven) {}

    /**
     * @param usage code in USB HID page 7, where the label names one
     * @param place after ISO/IEC 9995-1, where it can be told
     * @param state how it answered, without proof untested
     */
    record Seat(Key key, int row, int column, OptionalInt usage, Optional<String> place, KeyState state) {
        boolean proven() {
            return state == KeyState.GOOD;
        }
    }

    /** A session on the board: the log's name, and what came out when its events were read with this plan. */
    public record Proof(String log, Outcome outcome) {}

    public PinTable {
        rows = List.copyOf(rows);
        columns = List.copyOf(columns);
        keys = List.copyOf(keys);
    }

    /** The table of a plan; the proof's session must be one of this plan. */
    public static PinTable of(Plan plan, Optional<Proof> proof) {
        List<KeyState> states = proof.map(known -> known.outcome().session().states())
                .orElse(plan.keys().stream().map(key -> KeyState.UNTESTED).toList());
        Map<Integer, String> places = IsoPlaces.of(plan);
        int firstColumn = plan.nets(NetKind.ROW).size();
        List<Seat> seats = plan.keys().stream()
                .map(key -> new Seat(
                        key,
                        key.row(),
                        key.column() - firstColumn,
                        HidUsages.of(plan, key),
                        Optional.ofNullable(places.get(key.index())),
                        states.get(key.index())))
                .toList();
        List<Lead> leads = IntStream.range(0, plan.nets().size())
                .mapToObj(net -> new Lead(
                        plan.nets().get(net),
                        seats.stream()
                                .anyMatch(seat -> seat.proven()
                                        && (seat.key().row() == net
                                                || seat.key().column() == net))))
                .toList();
        return new PinTable(
                plan, leads.subList(0, firstColumn), leads.subList(firstColumn, leads.size()), seats, proof);
    }

    long provenKeys() {
        return keys.stream().filter(Seat::proven).count();
    }

    /** A sentence: how much of it is proven. */
    public String remark() {
        return proof.isPresent()
                ? provenKeys() + " of " + keys.size() + " keys answered as planned in the session."
                : "as planned; no session was given that proves it.";
    }
}
