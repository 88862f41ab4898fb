package buzzout.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The pins coloured so that every key joins two colours, as rows and columns are: a union-find with parity, in O(k·p)
 * for k keys on p pins. A join that would close an odd circle is left out; those in most triangles come last, for a key
 * between two rows closes one with every column, and a sound key at most one with it.
 */
final class TwoSides {
    private final int[] parent;
    private final boolean[] differs;
    private final List<Join> odd = new ArrayList<>();

    private TwoSides(int pins) {
        parent = IntStream.range(0, pins).toArray();
        differs = new boolean[pins];
    }

    static TwoSides of(int pins, List<Join> joins) {
        boolean[][] joined = new boolean[pins][pins];
        for (Join join : joins) {
            joined[join.pair().low()][join.pair().reads()] = true;
            joined[join.pair().reads()][join.pair().low()] = true;
        }
        TwoSides sides = new TwoSides(pins);
        joins.stream()
                .sorted(Comparator.comparingLong(join -> IntStream.range(0, pins)
                        .filter(pin -> joined[join.pair().low()][pin]
                                && joined[join.pair().reads()][pin])
                        .count()))
                .forEach(sides::take);
        return sides;
    }

    private void take(Join join) {
        int one = join.pair().low();
        int other = join.pair().reads();
        if (component(one) != component(other)) {
            boolean turned = side(one) == side(other);
            int moved = component(other);
            parent[moved] = component(one);
            differs[moved] = turned;
        } else if (side(one) == side(other)) {
            odd.add(join);
        }
    }

    /** A pin that stands for all that are joined with this one. */
    int component(int pin) {
        int at = pin;
        while (parent[at] != at) {
            at = parent[at];
        }
        return at;
    }

    /** On which of its component's two sides a pin is. */
    boolean side(int pin) {
        boolean side = false;
        for (int at = pin; parent[at] != at; at = parent[at]) {
            side ^= differs[at];
        }
        return side;
    }

    /** The joins that contradict the others, in the order in which they were found. */
    List<Join> odd() {
        return List.copyOf(odd);
    }
}
