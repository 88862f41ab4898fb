package buzzout.circuit;

import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * A board's conduction, ready to be asked what a sweep reads while some keys are held.
 *
 * <p>Pieces that always conduct both ways are merged once into lumps (union-find); a question then walks only the
 * branches of the keys that are down. With p pins and h such keys a question costs O(p·h²), and O(p) for one key.
 */
public final class Circuit {
    /** More diodes than any path has. */
    private static final int NEVER = Integer.MAX_VALUE / 2;

    private final Wiring wiring;
    private final int sureDiodes;
    private final int pins;
    private final int[] lumpOf;
    /** The pins that hang on each lump, as a bit set. */
    private final long[] pinsOn;
    /** The keys whose switch conducts without a press. */
    private final BitSet stuck;
    /** The same board at the moments when all that is loose is open. */
    private final Optional<Circuit> atWorst;

    /** The same circuit with two nodes joined by one more wire. */
    private Circuit(Circuit circuit, int node, int other) {
        wiring = circuit.wiring;
        sureDiodes = circuit.sureDiodes;
        pins = circuit.pins;
        stuck = circuit.stuck;
        lumpOf = circuit.lumpOf.clone();
        pinsOn = circuit.pinsOn.clone();
        atWorst = circuit.atWorst.map(worst -> new Circuit(worst, node, other));
        int from = lumpOf[node];
        int to = lumpOf[other];
        if (from != to) {
            Arrays.setAll(lumpOf, each -> lumpOf[each] == from ? to : lumpOf[each]);
            pinsOn[to] |= pinsOn[from];
        }
    }

    private Circuit(Wiring wiring, Optional<Circuit> atWorst) {
        this.atWorst = atWorst;
        this.wiring = wiring;
        sureDiodes = wiring.plan().controller().sureDiodes();
        pins = wiring.layout().pins;
        lumpOf = Lumps.of(wiring);
        pinsOn = new long[wiring.layout().nodes()];
        for (int pin = 0; pin < pins; pin++) {
            pinsOn[lumpOf[pin]] |= 1L << pin;
        }
        stuck = wiring.heldKeys();
    }

    public static Circuit of(Plan plan) {
        return of(plan, List.of());
    }

    /** The circuit of a board with these faults; their order does not matter. */
    public static Circuit of(Plan plan, Collection<? extends Fault> faults) {
        return of(new Layout(plan), faults);
    }

    /** The same, for the many circuits of one plan. */
    public static Circuit of(Layout layout, Collection<? extends Fault> faults) {
        Wiring wiring = Wiring.of(layout, faults);
        if (wiring.loose().isEmpty()) {
            return new Circuit(wiring, Optional.empty());
        }
        List<Fault> worst = new ArrayList<>(faults);
        worst.removeIf(fault -> fault.kind() == FaultKind.COMES_AND_GOES);
        worst.addAll(wiring.loose());
        return new Circuit(wiring, Optional.of(of(layout, worst)));
    }

    /** Whether something conducts only at times. */
    public boolean isLoose() {
        return atWorst.isPresent();
    }

    /**
     * The same board while the flying lead touches a joint.
     *
     * @throws java.util.NoSuchElementException if the plan has no spare pin
     */
    public Circuit touching(Joint joint) {
        int lead = wiring.plan().sparePinIndex().orElseThrow();
        Key key = wiring.plan().keys().get(joint.key());
        return new Circuit(this, lead, wiring.joint(key, joint.kind()));
    }

    /**
     * The same, with the joint as its place in its net's solder order.
     *
     * @throws java.util.NoSuchElementException if the plan has no spare pin
     */
    public Circuit touching(int net, int joint) {
        Net on = wiring.plan().nets().get(net);
        return touching(new Joint(on.joints().get(joint), on.kind()));
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

    /** The sweep while these keys, by index, are held. What conducts only at times may read either way. */
    public Reading read(BitSet held) {
        Reading now = readNow(held);
        if (atWorst.isEmpty()) {
            return now;
        }
        // An opened piece only takes away, so that whatever conducts at worst always does.
        Pairs always = atWorst.get().readNow(held).low();
        return new Reading(always, now.low().plus(now.between()).minus(always));
    }

    private Reading readNow(BitSet held) {
        Branches branches = branchesOf(held);
        int ground = lumpOf[wiring.layout().ground];
        long[] low = new long[pins];
        long[] between = new long[pins];
        for (int driven = 0; driven < pins; driven++) {
            int lump = lumpOf[driven];
            low[driven] = pinsOn[lump] | pinsOn[ground];
            if (branches.count > 0) {
                branches.spread(lump, ground);
                branches.collect(pinsOn, sureDiodes, low, between, driven);
            }
            low[driven] &= ~(1L << driven);
            between[driven] &= ~(low[driven] | 1L << driven);
        }
        return new Reading(Pairs.takingOver(low), Pairs.takingOver(between));
    }

    private Branches branchesOf(BitSet held) {
        BitSet down = stuck;
        if (!held.isEmpty()) {
            down = (BitSet) stuck.clone();
            down.or(held);
        }
        BitSet dragged = wiring.draggedPins();
        Branches branches = new Branches(2 * down.cardinality() + dragged.cardinality());
        for (int index = down.nextSetBit(0); index >= 0; index = down.nextSetBit(index + 1)) {
            Key key = wiring.plan().keys().get(index);
            if (wiring.isOpen(key)) {
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
        for (int pin = dragged.nextSetBit(0); pin >= 0; pin = dragged.nextSetBit(pin + 1)) {
            branches.add(lumpOf[pin], lumpOf[wiring.layout().ground], sureDiodes + 1);
        }
        return branches;
    }

    /** The branches that conduct now, from lump to lump, each with the diodes that it passes. */
    private static final class Branches {
        private final int[] from;
        private final int[] to;
        private final int[] passed;
        /** For each branch, the fewest diodes from its start to a driven lump. */
        private final int[] diodes;

        private int count;

        Branches(int most) {
            from = new int[most];
            to = new int[most];
            passed = new int[most];
            diodes = new int[most];
        }

        void add(int fromLump, int toLump, int diodesPassed) {
            from[count] = fromLump;
            to[count] = toLump;
            passed[count++] = diodesPassed;
        }

        /** Lowers each branch's diodes until none falls (Bellman–Ford over branches). */
        void spread(int driven, int ground) {
            Arrays.fill(diodes, NEVER);
            boolean fell = true;
            while (fell) {
                fell = false;
                for (int branch = 0; branch < count; branch++) {
                    int reached = passed[branch] + beyond(branch, driven, ground);
                    if (reached < diodes[branch]) {
                        diodes[branch] = reached;
                        fell = true;
                    }
                }
            }
        }

        private int beyond(int branch, int driven, int ground) {
            if (to[branch] == driven || to[branch] == ground) {
                return 0;
            }
            int fewest = NEVER;
            for (int next = 0; next < count; next++) {
                if (from[next] == to[branch]) {
                    fewest = Math.min(fewest, diodes[next]);
                }
            }
            return fewest;
        }

        void collect(long[] pinsOn, int sureDiodes, long[] low, long[] between, int driven) {
            for (int branch = 0; branch < count; branch++) {
                if (diodes[branch] <= sureDiodes) {
                    low[driven] |= pinsOn[from[branch]];
                } else if (diodes[branch] < NEVER) {
                    between[driven] |= pinsOn[from[branch]];
                }
            }
        }
    }
}
