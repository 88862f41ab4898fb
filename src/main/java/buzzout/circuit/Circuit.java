package buzzout.circuit;

import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
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

    private final Branches standing;
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
        standing = standing();
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
        standing = standing();
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

    /** What one held key adds to the quiet sweep, which is known. */
    public Reading added(Key key, Reading quiet) {
        return beyond(quiet, isOnlyWay(key) ? addedBy(key) : pressed(key));
    }

    /**
     * The same of a key that is soldered as it is on another board, on which no net is wired otherwise than planned.
     * Nothing where either board is loose or the key stuck.
     */
    public Optional<Reading> addedIfSoldered(Key key, Circuit as, Reading quiet) {
        if (isLoose() || as.isLoose() || stuck.get(key.index())) {
            return Optional.empty();
        }
        Way way = way(key, as.wiring);
        if (isOnlyWay(way)) {
            return Optional.of(beyond(quiet, added(across(way))));
        }
        Branches branches = new Branches(standing, 2);
        branches.add(way);
        return Optional.of(beyond(quiet, readNow(branches)));
    }

    /** What such a key ties together, where there is no other way for any current. */
    public Optional<Across> across(Key key, Circuit as) {
        Way way = way(key, as.wiring);
        return standing.count == 0 && !isLoose() && !as.isLoose() && isOnlyWay(way)
                ? Optional.of(across(way))
                : Optional.empty();
    }

    /** What a key ties together. */
    public Reading added(Across across) {
        Pairs forwards = Pairs.across(across.driven(), across.reading());
        if (across.andBack()) {
            return new Reading(forwards.plus(Pairs.across(across.reading(), across.driven())), Pairs.NONE);
        }
        return sureDiodes > 0 ? new Reading(forwards, Pairs.NONE) : new Reading(Pairs.NONE, forwards);
    }

    private static Reading beyond(Reading quiet, Reading now) {
        return new Reading(
                now.low().minus(quiet.low()),
                now.between().minus(quiet.between()).minus(quiet.low()));
    }

    /** A key's way for current from lump to lump, and whether also back. */
    private record Way(int from, int to, boolean andBack, boolean isOpen) {}

    private Way way(int key) {
        return way(wiring.plan().keys().get(key), wiring);
    }

    private Way way(Key key, Wiring soldered) {
        NetKind leaves = wiring.currentLeavesTo(key, soldered);
        return new Way(
                lumpOf[soldered.end(key, leaves.other())],
                lumpOf[soldered.end(key, leaves)],
                soldered.isBypassed(key),
                soldered.isOpen(key));
    }

    private boolean isOnlyWay(Key key) {
        return isOnlyWay(way(key.index()))
                && atWorst.map(worst -> worst.isOnlyWay(key)).orElse(true);
    }

    /** Whether no current flows on through other keys, and ground has no say. */
    private boolean isOnlyWay(Way way) {
        int ground = lumpOf[wiring.layout().ground];
        return way.isOpen()
                || (way.from() != ground
                        && way.to() != ground
                        && !standing.goOn(way.from(), way.to())
                        && !(way.andBack() && standing.goOn(way.to(), way.from())));
    }

    private Reading addedBy(Key key) {
        Reading now = added(across(way(key.index())));
        if (atWorst.isEmpty()) {
            return now;
        }
        Circuit worst = atWorst.get();
        Pairs always = worst.added(worst.across(worst.way(key.index()))).low();
        return new Reading(always, now.low().plus(now.between()).minus(always));
    }

    private Across across(Way way) {
        return way.isOpen() || way.from() == way.to()
                ? Across.NOTHING
                : new Across(pinsOn[way.to()], pinsOn[way.from()], way.andBack());
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
        return readNow(branchesOf(held));
    }

    private Reading readNow(Branches branches) {
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

    /** The branches that conduct with no key held: stuck switches and dragged pins. */
    private Branches standing() {
        BitSet dragged = wiring.draggedPins();
        Branches branches = new Branches(2 * stuck.cardinality() + dragged.cardinality());
        for (int key = stuck.nextSetBit(0); key >= 0; key = stuck.nextSetBit(key + 1)) {
            branches.add(way(key));
        }
        for (int pin = dragged.nextSetBit(0); pin >= 0; pin = dragged.nextSetBit(pin + 1)) {
            branches.add(lumpOf[pin], lumpOf[wiring.layout().ground], sureDiodes + 1);
        }
        return branches;
    }

    private Branches branchesOf(BitSet held) {
        Branches branches = new Branches(standing, 2 * held.cardinality());
        for (int key = held.nextSetBit(0); key >= 0; key = held.nextSetBit(key + 1)) {
            if (!stuck.get(key)) {
                branches.add(way(key));
            }
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

        /** The same branches, and room for more. */
        Branches(Branches others, int more) {
            from = Arrays.copyOf(others.from, others.count + more);
            to = Arrays.copyOf(others.to, others.count + more);
            passed = Arrays.copyOf(others.passed, others.count + more);
            diodes = new int[others.count + more];
            count = others.count;
        }

        /** Whether current that passes from one lump to another may come from farther or go on. */
        boolean goOn(int fromLump, int toLump) {
            for (int branch = 0; branch < count; branch++) {
                if (to[branch] == fromLump || from[branch] == toLump) {
                    return true;
                }
            }
            return false;
        }

        void add(Way way) {
            if (way.isOpen()) {
                return;
            }
            add(way.from(), way.to(), way.andBack() ? 0 : 1);
            if (way.andBack()) {
                add(way.to(), way.from(), 0);
            }
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
