package buzzout.session;

import buzzout.plan.Key;
import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.session.Learnt.Seat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Makes a plan of learnt seats, with the names, colours and solder order of the earlier plan where they still fit. */
final class LearntPlan {
    private final Plan before;
    private final NetKind stripe;
    private final Map<Integer, Seat> seats;
    private final List<String> notes;
    /** The earlier net of each pin. */
    private final Map<Integer, Net> namesakes = new HashMap<>();

    LearntPlan(Plan before, NetKind stripe, Map<Integer, Seat> seats, List<String> notes) {
        this.before = before;
        this.stripe = stripe;
        this.seats = new LinkedHashMap<>(seats);
        this.notes = notes;
    }

    Learnt made() {
        match(NetKind.ROW);
        match(NetKind.COLUMN);
        place();
        List<Key> kept = before.keys().stream()
                .filter(key -> seats.containsKey(key.index()))
                .toList();
        List<Integer> rows = pins(NetKind.ROW);
        List<Integer> columns = pins(NetKind.COLUMN);
        List<Integer> all = Stream.concat(rows.stream(), columns.stream()).toList();
        Map<Integer, Integer> keyIndex = new HashMap<>();
        List<Key> keys = new ArrayList<>();
        for (Key key : kept) {
            Seat seat = seats.getOrDefault(key.index(), new Seat(0, 0));
            keyIndex.put(key.index(), keys.size());
            keys.add(new Key(
                    keys.size(), key.name(), all.indexOf(seat.rowPin()), all.indexOf(seat.columnPin()), key.place()));
        }
        Set<String> names = new HashSet<>();
        namesakes.values().forEach(net -> names.add(net.name()));
        List<Net> nets = new ArrayList<>();
        rows.forEach(pin -> nets.add(net(pin, NetKind.ROW, names, keyIndex)));
        columns.forEach(pin -> nets.add(net(pin, NetKind.COLUMN, names, keyIndex)));
        Optional<String> spare = before.sparePin()
                .filter(pin -> nets.stream().noneMatch(net -> net.pin().equals(pin)));
        Plan plan = new Plan(
                before.name(),
                before.controller(),
                stripe,
                before.diodes(),
                nets,
                keys,
                spare,
                before.bounceLimitMillis());
        return new Learnt(plan, notes);
    }

    /** Gives each learnt pin the earlier net that has most of its keys, the best matches first. */
    private void match(NetKind kind) {
        record Match(int pin, Net net, long shared) {}
        List<Match> matches = new ArrayList<>();
        for (int pin : pins(kind)) {
            for (Net net : before.nets(kind)) {
                long shared = keysOn(pin, kind).stream()
                        .filter(net.joints()::contains)
                        .count();
                if (isNamed(net) && shared > 0) {
                    matches.add(new Match(pin, net, shared));
                }
            }
        }
        matches.sort(Comparator.comparingLong(Match::shared).reversed());
        for (Match match : matches) {
            if (!namesakes.containsKey(match.pin()) && !namesakes.containsValue(match.net())) {
                namesakes.put(match.pin(), match.net());
            }
        }
        // A net of which no key answered stays on its pin, where nothing else turned out to be.
        for (Net net : before.nets(kind)) {
            int pin = before.pinIndex(net.pin()).orElseThrow();
            boolean free = seats.values().stream().noneMatch(seat -> seat.rowPin() == pin || seat.columnPin() == pin);
            if (isNamed(net) && !namesakes.containsValue(net) && free) {
                namesakes.put(pin, net);
            }
        }
    }

    /** A net called as its pin is one that was made up to be learnt from. */
    private static boolean isNamed(Net net) {
        return !net.name().equals(net.pin());
    }

    /** Puts the keys that taught nothing where the earlier plan has them, or leaves them out. */
    private void place() {
        Set<Seat> taken = new HashSet<>(seats.values());
        List<Key> supposed = new ArrayList<>();
        List<Key> left = new ArrayList<>();
        for (Key key : before.keys()) {
            if (seats.containsKey(key.index())) {
                continue;
            }
            Optional<Integer> row = pinOf(before.row(key));
            Optional<Integer> column = pinOf(before.column(key));
            Optional<Seat> seat = row.isPresent() && column.isPresent()
                    ? Optional.of(new Seat(row.get(), column.get()))
                    : beside(key);
            if (seat.isPresent() && taken.add(seat.get())) {
                seats.put(key.index(), seat.get());
                supposed.add(key);
            } else {
                left.add(key);
            }
        }
        if (!supposed.isEmpty()) {
            notes.add("Not learnt but supposed, from the earlier plan or from the keys around: the "
                    + (supposed.size() == 1 ? "place" : "places") + " of " + Answers.names(supposed) + ".");
        }
        if (!left.isEmpty()) {
            notes.add("Left out, because nothing tells where " + (left.size() == 1 ? "it is: " : "they are: ")
                    + Answers.names(left) + ".");
        }
    }

    private Optional<Integer> pinOf(Net net) {
        return namesakes.entrySet().stream()
                .filter(entry -> entry.getValue().equals(net))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** The row of the next key in its line and the column of the next key above or below, where there are such. */
    private Optional<Seat> beside(Key key) {
        Optional<Integer> row = nearest(key, NetKind.ROW);
        Optional<Integer> column = nearest(key, NetKind.COLUMN);
        return row.isPresent() && column.isPresent()
                ? Optional.of(new Seat(row.get(), column.get()))
                : Optional.empty();
    }

    private Optional<Integer> nearest(Key key, NetKind kind) {
        boolean row = kind == NetKind.ROW;
        return before.keys().stream()
                .filter(other -> seats.containsKey(other.index()))
                .filter(other -> row
                        ? other.place().y() == key.place().y()
                        : Math.abs(other.place().middle() - key.place().middle()) < 0.5)
                .min(Comparator.comparingDouble(other -> row
                        ? Math.abs(other.place().middle() - key.place().middle())
                        : Math.abs(other.place().y() - key.place().y())))
                .map(other -> seats.getOrDefault(other.index(), new Seat(0, 0)).pin(kind));
    }

    /** The pins of a kind: as the earlier plan orders its nets where it has all, else as they lie. */
    private List<Integer> pins(NetKind kind) {
        Set<Integer> pins = new TreeSet<>();
        seats.values().forEach(seat -> pins.add(seat.pin(kind)));
        Comparator<Integer> asTheyLie = Comparator.comparingDouble(pin -> keysOn(pin, kind).stream()
                .map(before.keys()::get)
                .mapToDouble(key ->
                        kind == NetKind.ROW ? key.place().y() : key.place().middle())
                .average()
                .orElse(0));
        boolean allNamed = pins.stream().allMatch(namesakes::containsKey);
        Comparator<Integer> asBefore =
                Comparator.comparingInt(pin -> before.nets().indexOf(namesakes.get(pin)));
        return pins.stream().sorted(allNamed ? asBefore : asTheyLie).toList();
    }

    private List<Integer> keysOn(int pin, NetKind kind) {
        return seats.entrySet().stream()
                .filter(entry -> entry.getValue().pin(kind) == pin)
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }

    private Net net(int pin, NetKind kind, Set<String> names, Map<Integer, Integer> keyIndex) {
        List<Integer> keys = keysOn(pin, kind);
        Optional<Net> like = Optional.ofNullable(namesakes.get(pin));
        String name = like.map(Net::name).orElseGet(() -> fresh(kind, names));
        List<Integer> joints = new ArrayList<>(keys);
        List<Link> links = new ArrayList<>();
        int lead = 0;
        if (like.isPresent()
                && new HashSet<>(keys).equals(new HashSet<>(like.get().joints()))) {
            joints = like.get().joints();
            links = like.get().links();
            lead = like.get().leadJoint();
        } else {
            joints.sort(Comparator.comparingDouble((Integer key) -> along(key, kind)));
            for (int joint = 1; joint < joints.size(); joint++) {
                int from = joints.get(joint - 1);
                int to = joints.get(joint);
                links.add(new Link(
                        joint - 1,
                        joint,
                        like.filter(net -> jumps(net, from, to)).isPresent()));
            }
            lead = Math.max(
                    0,
                    like.map(net -> net.joints().get(net.leadJoint()))
                            .map(joints::indexOf)
                            .orElse(0));
        }
        List<Integer> renumbered =
                joints.stream().map(key -> keyIndex.getOrDefault(key, 0)).toList();
        return new Net(name, kind, before.pins().get(pin), renumbered, links, lead, like.flatMap(Net::colour));
    }

    private double along(int key, NetKind kind) {
        Key at = before.keys().get(key);
        return kind == NetKind.ROW ? at.place().x() : at.place().y();
    }

    private static boolean jumps(Net net, int key, int other) {
        return net.links().stream()
                .filter(Link::jumper)
                .anyMatch(link -> Set.of(
                                net.joints().get(link.from()), net.joints().get(link.to()))
                        .equals(Set.of(key, other)));
    }

    private static String fresh(NetKind kind, Set<String> names) {
        for (int number = 1; ; number++) {
            String name = (kind == NetKind.ROW ? "R" : "C") + number;
            if (names.add(name)) {
                return name;
            }
        }
    }
}
