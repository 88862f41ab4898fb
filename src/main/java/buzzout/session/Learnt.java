package buzzout.session;

import buzzout.plan.Key;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A board as it is wired, learnt from a session in which keys were named and pressed: what each joined tells its row and
 * column, and the direction of the current which of them the stripes face. The order of joints along a net cannot be
 * learnt by pressing: it is the earlier plan's where the net has the same keys, and reading order elsewhere.
 *
 * @param plan as wired; keys that could not be placed are not in it
 * @param notes sentences: what contradicts itself, what is missing, what was only supposed
 */
public record Learnt(Plan plan, List<String> notes) {
    public Learnt {
        notes = List.copyOf(notes);
    }

    /** What a session teaches, beginning from its plan; nothing where no key that was named joined two pins. */
    public static Optional<Learnt> from(Session session) {
        Plan plan = session.plan();
        Answers answers = Answers.of(session);
        TwoSides colours = TwoSides.of(plan.pins().size(), answers.joins());
        List<Join> sound = new ArrayList<>(answers.joins());
        sound.removeAll(colours.odd());
        if (sound.isEmpty()) {
            return Optional.empty();
        }
        Sides sides = Sides.of(plan, sound, colours);
        List<String> notes = new ArrayList<>();
        colours.odd().forEach(join -> notes.add(oddNote(plan, sides, join)));
        sound.stream()
                .filter(join ->
                        !join.bothWays() && sides.kinds().get(join.pair().low()) != sides.stripe())
                .forEach(join ->
                        notes.add("The diode of " + key(plan, join).spoken() + " sits the other way round than most."));
        Map<Integer, Seat> seats = seats(plan, sides, sound, notes);
        notes.addAll(answers.notes());
        return Optional.of(new LearntPlan(plan, sides.stripe(), seats, notes).made());
    }

    /** The pins, by index, of a key's row and column. */
    record Seat(int rowPin, int columnPin) {
        int pin(NetKind kind) {
            return kind == NetKind.ROW ? rowPin : columnPin;
        }
    }

    private static Key key(Plan plan, Join join) {
        return plan.keys().get(join.key());
    }

    private static String oddNote(Plan plan, Sides sides, Join join) {
        NetKind kind = sides.kinds().getOrDefault(join.pair().low(), NetKind.ROW);
        return key(plan, join).spoken() + " joins two " + kind.word() + "s, "
                + Answers.pin(plan, join.pair().low()) + " and "
                + Answers.pin(plan, join.pair().reads()) + ", as the other keys have them.";
    }

    /** Each key's row and column; of two keys at one crossing the one that fits the board better. */
    private static Map<Integer, Seat> seats(Plan plan, Sides sides, List<Join> sound, List<String> notes) {
        Map<Seat, Join> taken = new LinkedHashMap<>();
        for (Join join : sound) {
            boolean lowIsRow = sides.kinds().get(join.pair().low()) == NetKind.ROW;
            Seat seat = lowIsRow
                    ? new Seat(join.pair().low(), join.pair().reads())
                    : new Seat(join.pair().reads(), join.pair().low());
            Join other = taken.get(seat);
            if (other == null) {
                taken.put(seat, join);
                continue;
            }
            boolean better = misfit(plan, sound, join) < misfit(plan, sound, other);
            taken.put(seat, better ? join : other);
            notes.add(key(plan, other).spoken() + " and " + key(plan, join).spoken() + " both join "
                    + Answers.pin(plan, seat.rowPin()) + " and " + Answers.pin(plan, seat.columnPin()) + "; only "
                    + key(plan, better ? join : other).spoken() + " can be there.");
        }
        Map<Integer, Seat> seats = new LinkedHashMap<>();
        taken.forEach((seat, join) -> seats.put(join.key(), seat));
        return seats;
    }

    /** How far a key lies from the middle of the others on its pins, at its nearer side. */
    private static double misfit(Plan plan, List<Join> sound, Join join) {
        double misfit = 0;
        for (int pin : List.of(join.pair().low(), join.pair().reads())) {
            List<Key> others = sound.stream()
                    .filter(other -> other.key() != join.key() && other.touches(pin) && !other.joinsTheSameAs(join))
                    .map(other -> key(plan, other))
                    .toList();
            Key key = key(plan, join);
            misfit += Math.min(
                    others.stream()
                            .mapToDouble(other -> Math.abs(
                                    other.place().middle() - key.place().middle()))
                            .average()
                            .orElse(0),
                    others.stream()
                            .mapToDouble(other ->
                                    Math.abs(other.place().y() - key.place().y()))
                            .average()
                            .orElse(0));
        }
        return misfit;
    }
}
