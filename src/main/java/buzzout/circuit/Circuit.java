package buzzout.circuit;

import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * A board's conduction, ready to be asked what a sweep reads while some keys are held.
 *
 * <p>Pieces that always conduct both ways are merged once into lumps (union-find); a question then walks only the held
 * keys' branches. With p pins and h held keys a question costs O(p·h²) at worst and O(p) for one key.
 */
public final class Circuit {
    /** A level that no pull-up current reaches. */
    private static final int NEVER = Integer.MAX_VALUE / 2;

    private final Plan plan;
    private final Wiring wiring;
    private final int[] lumpOf;
    private final int sureDiodes;

    private Circuit(Wiring wiring) {
        this.plan = wiring.plan();
        this.wiring = wiring;
        this.sureDiodes = plan.controller().sureDiodes();
        lumpOf = new int[wiring.nodes()];
        for (int node = 0; node < lumpOf.length; node++) {
            lumpOf[node] = node;
        }
        wiring.forEachWire((node, other) -> lumpOf[find(node)] = find(other));
        for (int node = 0; node < lumpOf.length; node++) {
            lumpOf[node] = find(node);
        }
    }

    public static Circuit of(Plan plan) {
        return of(plan, List.of());
    }

    public static Circuit of(Plan plan, Collection<? extends Fault> faults) {
        Wiring wiring = new Wiring(plan);
        faults.stream().sorted(Comparator.comparing(Fault::kind)).forEach(fault -> fault.change(wiring));
        return new Circuit(wiring);
    }

    /** The sweep with no key pressed. */
    public Reading quiet() {
        return read(new BitSet());
    }

    /** The sweep while one key is held. */
    public Reading pressed(Key key) {
        BitSet held = new BitSet();
        held.set(key.index());
        return read(held);
    }

    /** The sweep while these keys, by index, are held. */
    public Reading read(BitSet held) {
        Branches branches = branches(held);
        int pins = plan.pins().size();
        long[] low = new long[pins];
        long[] between = new long[pins];
        int[] diodesTo = new int[lumpOf.length];
        for (int driven = 0; driven < pins; driven++) {
            Arrays.fill(diodesTo, NEVER);
            diodesTo[lumpOf[driven]] = 0;
            diodesTo[lumpOf[wiring.ground()]] = 0;
            branches.spread(diodesTo);
            for (int pin = 0; pin < pins; pin++) {
                int diodes = diodesTo[lumpOf[pin]];
                if (pin == driven || diodes == NEVER) {
                    continue;
                }
                (diodes <= sureDiodes ? low : between)[driven] |= 1L << pin;
            }
        }
        return new Reading(Pairs.ofSweep(low), Pairs.ofSweep(between));
    }

    private Branches branches(BitSet held) {
        Branches branches = new Branches(plan.keys().size() + plan.pins().size());
        for (Key key : plan.keys()) {
            if (wiring.isOpen(key) || !(held.get(key.index()) || wiring.isHeld(key))) {
                continue;
            }
            int anode = lumpOf[wiring.anodeEnd(key)];
            int cathode = lumpOf[wiring.cathodeEnd(key)];
            if (wiring.isBypassed(key)) {
                branches.add(anode, cathode, 0);
                branches.add(cathode, anode, 0);
            } else {
                branches.add(anode, cathode, 1);
            }
        }
        BitSet dragged = wiring.draggedPins();
        for (int pin = dragged.nextSetBit(0); pin >= 0; pin = dragged.nextSetBit(pin + 1)) {
            branches.add(lumpOf[pin], lumpOf[wiring.ground()], sureDiodes + 1);
        }
        return branches;
    }

    private int find(int node) {
        int root = node;
        while (lumpOf[root] != root) {
            root = lumpOf[root];
        }
        while (lumpOf[node] != root) {
            int next = lumpOf[node];
            lumpOf[node] = root;
            node = next;
        }
        return root;
    }

    /** The branches that conduct now, from lump to lump, each with the diodes it passes. */
    private static final class Branches {
        private final int[] from;
        private final int[] to;
        private final int[] diodes;
        private int count;

        Branches(int most) {
            from = new int[2 * most];
            to = new int[2 * most];
            diodes = new int[2 * most];
        }

        void add(int fromLump, int toLump, int passed) {
            from[count] = fromLump;
            to[count] = toLump;
            diodes[count++] = passed;
        }

        /** Lowers each lump's fewest diodes on the way to a driven lump until none falls (Bellman–Ford). */
        void spread(int[] diodesTo) {
            boolean fell = true;
            while (fell) {
                fell = false;
                for (int branch = 0; branch < count; branch++) {
                    int reached = diodesTo[to[branch]] + diodes[branch];
                    if (reached < diodesTo[from[branch]]) {
                        diodesTo[from[branch]] = reached;
                        fell = true;
                    }
                }
            }
        }
    }
}
