package buzzout.diagnosis;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.FaultKind;
import buzzout.circuit.Part;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Every fault that can be charged on a plan's board, by number, with its prior and its place. Nets are bit sets. */
final class Charges {
    /** With a held switch, these may open a way round through it, so that any key's answer may depend on them. */
    private static final Set<FaultKind> LOOPING = EnumSet.complementOf(EnumSet.of(
            FaultKind.LINK_OPEN,
            FaultKind.JUMPER_OFF,
            FaultKind.LEAD_OFF,
            FaultKind.KEY_OPEN,
            FaultKind.SWITCH_HELD,
            FaultKind.COMES_AND_GOES));

    /** They exchange nets, and are not too rare to begin with. */
    private static final Set<FaultKind> EXCHANGING =
            EnumSet.of(FaultKind.LEADS_SWAPPED, FaultKind.MIRROR_IMAGE, FaultKind.STRIPES_TURNED);

    private final Plan plan;
    private final List<Fault> faults;
    private final double[] logOdds;
    private final double likeliestLogOdds;
    private final long[] nets;
    private final BitSet inOneKey = new BitSet();
    private final BitSet held = new BitSet();
    private final BitSet loose = new BitSet();
    private final BitSet looping = new BitSet();
    private final BitSet exchanges = new BitSet();
    private final List<BitSet> keysOfNet = new ArrayList<>();
    /** For each fault, the keys that sit on its nets, or its only key. */
    private final List<BitSet> reach = new ArrayList<>();
    /** Faults that sit on each net and in no single key. */
    private final List<BitSet> onNet = new ArrayList<>();
    /** Faults that sit in each key alone. */
    private final List<BitSet> inKey = new ArrayList<>();
    /** For each fault and each part that it spoils, all faults that spoil the part, itself included. */
    private final List<List<BitSet>> spoilers = new ArrayList<>();

    Charges(Plan plan, Priors priors) {
        this.plan = plan;
        faults = Catalogue.of(plan);
        logOdds = new double[faults.size()];
        double likeliest = faults.isEmpty() ? 0 : Double.NEGATIVE_INFINITY;
        for (int number = 0; number < logOdds.length; number++) {
            logOdds[number] = priors.logOdds(faults.get(number).kind());
            likeliest = Math.max(likeliest, logOdds[number]);
        }
        likeliestLogOdds = likeliest;
        nets = new long[faults.size()];
        for (Net net : plan.nets()) {
            onNet.add(new BitSet());
            BitSet keys = new BitSet();
            for (int key : net.joints()) {
                keys.set(key);
            }
            keysOfNet.add(keys);
        }
        for (int key = 0; key < plan.keys().size(); key++) {
            inKey.add(new BitSet());
        }
        for (int number = 0; number < faults.size(); number++) {
            place(number, faults.get(number));
        }
        Map<Long, BitSet> spoiling = new HashMap<>();
        for (int number = 0; number < faults.size(); number++) {
            List<Part> parts = faults.get(number).parts();
            List<BitSet> others = new ArrayList<>(parts.size());
            for (Part part : parts) {
                BitSet spoiled = spoiling.computeIfAbsent(part.number(), any -> new BitSet());
                spoiled.set(number);
                others.add(spoiled);
            }
            spoilers.add(others);
        }
    }

    private void place(int number, Fault fault) {
        for (int net : fault.nets(plan)) {
            nets[number] |= 1L << net;
        }
        FaultKind kind = fault.kind();
        held.set(number, kind == FaultKind.SWITCH_HELD);
        loose.set(number, kind == FaultKind.COMES_AND_GOES);
        looping.set(number, LOOPING.contains(kind));
        exchanges.set(number, EXCHANGING.contains(kind));
        if (fault.onlyKey().isPresent()) {
            int key = fault.onlyKey().getAsInt();
            inOneKey.set(number);
            inKey.get(key).set(number);
            BitSet only = new BitSet();
            only.set(key);
            reach.add(only);
        } else {
            for (long left = nets[number]; left != 0; left &= left - 1) {
                onNet.get(Long.numberOfTrailingZeros(left)).set(number);
            }
            reach.add(keysOn(nets[number]));
        }
    }

    Plan plan() {
        return plan;
    }

    Fault fault(int number) {
        return faults.get(number);
    }

    int count() {
        return faults.size();
    }

    double logOdds(int number) {
        return logOdds[number];
    }

    /** The highest logarithm of the odds of any single fault. */
    double likeliestLogOdds() {
        return likeliestLogOdds;
    }

    double logOdds(BitSet charged) {
        double sum = 0;
        for (int number = charged.nextSetBit(0); number >= 0; number = charged.nextSetBit(number + 1)) {
            sum += logOdds[number];
        }
        return sum;
    }

    List<Fault> faults(BitSet charged) {
        List<Fault> theirs = new ArrayList<>();
        for (int number = charged.nextSetBit(0); number >= 0; number = charged.nextSetBit(number + 1)) {
            theirs.add(faults.get(number));
        }
        return theirs;
    }

    /** Whether no charged fault spoils a part that this one does. */
    boolean canJoin(BitSet charged, int number) {
        for (BitSet spoiling : spoilers.get(number)) {
            if (spoiling.intersects(charged)) {
                return false;
            }
        }
        return true;
    }

    long nets(int number) {
        return nets[number];
    }

    BitSet reach(int number) {
        return reach.get(number);
    }

    /** The faults that sit in this key alone. */
    BitSet inKey(int key) {
        return (BitSet) inKey.get(key).clone();
    }

    /** The held switches. */
    BitSet held() {
        return held;
    }

    /** The faults of nets that last and show the same in every sweep. */
    BitSet lastingOfNets() {
        BitSet lasting = new BitSet();
        for (int number = 0; number < faults.size(); number++) {
            lasting.set(
                    number,
                    !inOneKey.get(number)
                            && !loose.get(number)
                            && faults.get(number).kind() != FaultKind.PIN_DRAGGED);
        }
        return lasting;
    }

    boolean inOneKey(int number) {
        return inOneKey.get(number);
    }

    /** Whether one more fault may change any key's answer because current can go round through a held switch. */
    boolean loops(BitSet charged, int number) {
        boolean someHeld = held.get(number) || held.intersects(charged);
        return someHeld && (looping.get(number) || looping.intersects(charged));
    }

    /** The faults that exchange nets, those apart that few hands make. */
    BitSet exchanges() {
        return exchanges;
    }

    /** The faults that do not last. */
    BitSet loose() {
        return loose;
    }

    /** Whether one of these faults is a held switch. */
    boolean holdsAny(BitSet charged) {
        return held.intersects(charged);
    }

    /** Whether this fault ties nets together or exchanges them. */
    boolean tiesNets(int number) {
        return !inOneKey.get(number) && Long.bitCount(nets[number]) > 1;
    }

    /** The keys that the plan puts on any of these nets. */
    BitSet keysOn(long someNets) {
        BitSet keys = new BitSet();
        for (long left = someNets; left != 0; left &= left - 1) {
            keys.or(keysOfNet.get(Long.numberOfTrailingZeros(left)));
        }
        return keys;
    }

    /** These nets and all that charged faults tie to them. */
    long joined(long someNets, BitSet charged) {
        long joined = someNets;
        long before;
        do {
            before = joined;
            for (int number = charged.nextSetBit(0); number >= 0; number = charged.nextSetBit(number + 1)) {
                if (!inOneKey.get(number) && (nets[number] & joined) != 0) {
                    joined |= nets[number];
                }
            }
        } while (joined != before);
        return joined;
    }

    /** These nets and all that charged faults tie to them or bring keys to. */
    long reached(long someNets, BitSet charged) {
        long reached = joined(someNets, charged);
        for (int number = charged.nextSetBit(0); number >= 0; number = charged.nextSetBit(number + 1)) {
            reached |= inOneKey.get(number) && (nets[number] & reached) != 0 ? nets[number] : 0;
        }
        return joined(reached, charged);
    }

    /** How many of these faults sit in keys of one net, at most. */
    int mostInKeysOfOneNet(BitSet charged) {
        int[] count = new int[Long.SIZE];
        int most = 0;
        for (int number = charged.nextSetBit(0); number >= 0; number = charged.nextSetBit(number + 1)) {
            if (inOneKey.get(number)) {
                for (long left = nets[number]; left != 0; left &= left - 1) {
                    most = Math.max(most, ++count[Long.numberOfTrailingZeros(left)]);
                }
            }
        }
        return most;
    }

    /** Faults that sit on any of these nets and in no single key. */
    BitSet onNets(long someNets) {
        BitSet faultsThere = new BitSet();
        for (long left = someNets; left != 0; left &= left - 1) {
            faultsThere.or(onNet.get(Long.numberOfTrailingZeros(left)));
        }
        return faultsThere;
    }

    /** Faults that could change what these keys and nets show, beside what is charged already. */
    BitSet touching(BitSet keys, long someNets, BitSet charged) {
        long reached = someNets;
        for (int number = charged.nextSetBit(0); number >= 0; number = charged.nextSetBit(number + 1)) {
            if ((nets[number] & someNets) != 0) {
                reached |= nets[number];
            }
        }
        BitSet touching = new BitSet();
        for (int key = keys.nextSetBit(0); key >= 0; key = keys.nextSetBit(key + 1)) {
            touching.or(inKey.get(key));
        }
        touching.or(onNets(reached));
        return touching;
    }
}
