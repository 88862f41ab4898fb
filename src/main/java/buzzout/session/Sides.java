package buzzout.session;

import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Place;
import buzzout.plan.Plan;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which pins are rows, which are columns, and which of them the stripes face.
 *
 * <p>Keys tell two sides apart, and the direction of the current tells which the stripes face, but not what to call
 * rows: that is what lies along the board rather than across it, and what the plan calls so, where it says something.
 */
record Sides(Map<Integer, NetKind> kinds, NetKind stripe) {
    /** A net that the plan names counts for more than any geometry. */
    private static final double NAMED = 1000;

    Sides {
        kinds = Map.copyOf(kinds);
    }

    static Sides of(Plan plan, List<Join> sound, TwoSides sides) {
        Set<Integer> components = new TreeSet<>();
        sound.forEach(join -> components.add(sides.component(join.pair().low())));
        Map<Integer, Boolean> stripeSide = new HashMap<>();
        Map<Integer, Double> lean = new HashMap<>();
        double together = 0;
        for (int component : components) {
            List<Join> joins = sound.stream()
                    .filter(join -> sides.component(join.pair().low()) == component)
                    .toList();
            long onTrueSide = joins.stream()
                    .filter(join -> !join.bothWays() && sides.side(join.pair().low()))
                    .count();
            long directed = joins.stream().filter(join -> !join.bothWays()).count();
            double leanOfTrueSide = lean(plan, joins, sides);
            lean.put(component, leanOfTrueSide);
            if (2 * onTrueSide != directed) {
                boolean side = 2 * onTrueSide > directed;
                stripeSide.put(component, side);
                together += side ? leanOfTrueSide : -leanOfTrueSide;
            }
        }
        NetKind stripe = together >= 0 ? NetKind.ROW : NetKind.COLUMN;
        Map<Integer, NetKind> kinds = new HashMap<>();
        for (Join join : sound) {
            for (int pin : List.of(join.pair().low(), join.pair().reads())) {
                int component = sides.component(pin);
                Boolean facing = stripeSide.get(component);
                boolean row = facing == null
                        ? sides.side(pin) == lean.getOrDefault(component, 0.0) >= 0
                        : (sides.side(pin) == facing) == (stripe == NetKind.ROW);
                kinds.put(pin, row ? NetKind.ROW : NetKind.COLUMN);
            }
        }
        return new Sides(kinds, stripe);
    }

    /** How much more the pins of the true side look like rows than those of the other. */
    private static double lean(Plan plan, List<Join> joins, TwoSides sides) {
        Set<Integer> pins = new HashSet<>();
        joins.forEach(join -> {
            pins.add(join.pair().low());
            pins.add(join.pair().reads());
        });
        double lean = 0;
        for (int pin : pins) {
            List<Place> places = joins.stream()
                    .filter(join -> join.touches(pin))
                    .map(join -> plan.keys().get(join.key()))
                    .map(Key::place)
                    .toList();
            double along = spread(places.stream().map(Place::middle).toList())
                    - spread(places.stream().map(Place::y).toList());
            double rowness = along + named(plan, pin);
            lean += sides.side(pin) ? rowness : -rowness;
        }
        return lean;
    }

    private static double spread(List<Double> values) {
        double mean = values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        return values.stream().mapToDouble(value -> Math.abs(value - mean)).sum();
    }

    private static double named(Plan plan, int pin) {
        if (pin >= plan.nets().size()) {
            return 0;
        }
        Net net = plan.nets().get(pin);
        if (net.name().equals(net.pin())) {
            return 0;
        }
        return net.kind() == NetKind.ROW ? NAMED : -NAMED;
    }
}
