package buzzout.diagnosis;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.FaultKind;
import buzzout.circuit.Part;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Every fault that can be charged on a plan's board, by number, with its prior and its place. */
final class Charges {
    private static final Set<FaultKind> COUPLING = EnumSet.of(
            FaultKind.MIRROR_IMAGE,
            FaultKind.STRIPES_TURNED,
            FaultKind.SWITCH_HELD,
            FaultKind.PIN_LOW,
            FaultKind.PIN_DRAGGED);

    private final Plan plan;
    private final List<Fault> faults;
    private final double[] logOdds;
    private final List<Set<Integer>> nets;
    /** Faults after which any key's answer may depend on any net. */
    private final BitSet couplesAll = new BitSet();
    /** Faults that sit on each net and in no single key. */
    private final List<BitSet> onNet = new ArrayList<>();
    /** Faults that sit in each key alone. */
    private final List<BitSet> inKey = new ArrayList<>();
    /** For each fault, those that can not be supposed together with it, itself included. */
    private final List<BitSet> excludes = new ArrayList<>();

    Charges(Plan plan, Priors priors) {
        this.plan = plan;
        faults = Catalogue.of(plan);
        logOdds = faults.stream()
                .mapToDouble(fault -> priors.logOdds(fault.kind()))
                .toArray();
        nets = faults.stream().map(fault -> fault.nets(plan)).toList();
        plan.nets().forEach(net -> onNet.add(new BitSet()));
        plan.keys().forEach(key -> inKey.add(new BitSet()));
        Map<Part, BitSet> spoiling = new HashMap<>();
        for (int number = 0; number < faults.size(); number++) {
            Fault fault = faults.get(number);
            for (Part part : fault.parts()) {
                spoiling.computeIfAbsent(part, any -> new BitSet()).set(number);
            }
            int id = number;
            couplesAll.set(number, COUPLING.contains(fault.kind()));
            fault.onlyKey()
                    .ifPresentOrElse(
                            key -> inKey.get(key).set(id),
                            () -> fault.nets(plan).forEach(net -> onNet.get(net).set(id)));
        }
        for (Fault fault : faults) {
            BitSet excluded = new BitSet();
            fault.parts().forEach(part -> excluded.or(spoiling.getOrDefault(part, new BitSet())));
            excludes.add(excluded);
        }
    }

    Plan plan() {
        return plan;
    }

    Fault fault(int number) {
        return faults.get(number);
    }

    double logOdds(int number) {
        return logOdds[number];
    }

    double logOdds(BitSet charged) {
        return charged.stream().mapToDouble(this::logOdds).sum();
    }

    List<Fault> faults(BitSet charged) {
        return charged.stream().mapToObj(faults::get).toList();
    }

    boolean canJoin(BitSet charged, int number) {
        return !excludes.get(number).intersects(charged);
    }

    /** The keys whose answers one more fault can change on a board that has these already. */
    BitSet affected(BitSet charged, int number) {
        Fault added = faults.get(number);
        BitSet affected = new BitSet();
        boolean coupled = couplesAll.get(number) || couplesAll.intersects(charged);
        if (!coupled && added.onlyKey().isPresent()) {
            affected.set(added.onlyKey().getAsInt());
        } else if (coupled) {
            affected.set(0, plan.keys().size());
        } else {
            Set<Integer> joined = joined(added.nets(plan), charged);
            for (Key key : plan.keys()) {
                affected.set(key.index(), joined.contains(key.row()) || joined.contains(key.column()));
            }
            wanderers(charged, joined).forEach(affected::set);
        }
        return affected;
    }

    /** These nets and all that charged faults tie to them. */
    private Set<Integer> joined(Set<Integer> nets, BitSet charged) {
        Set<Integer> joined = new HashSet<>(nets);
        boolean grew = true;
        while (grew) {
            grew = false;
            for (int number = charged.nextSetBit(0); number >= 0; number = charged.nextSetBit(number + 1)) {
                Set<Integer> tied = nets(number);
                if (faults.get(number).onlyKey().isEmpty() && tied.stream().anyMatch(joined::contains)) {
                    grew |= joined.addAll(tied);
                }
            }
        }
        return joined;
    }

    /** Keys that a charged fault ties to one of these nets although the plan does not. */
    private Set<Integer> wanderers(BitSet charged, Set<Integer> nets) {
        Set<Integer> keys = new HashSet<>();
        for (int number = charged.nextSetBit(0); number >= 0; number = charged.nextSetBit(number + 1)) {
            if (nets(number).stream().anyMatch(nets::contains)) {
                faults.get(number).onlyKey().ifPresent(keys::add);
            }
        }
        return keys;
    }

    private Set<Integer> nets(int number) {
        return nets.get(number);
    }

    /** Faults that could change what these keys and pins show, beside what is charged already. */
    BitSet touching(Set<Integer> keys, Set<Integer> nets, BitSet charged) {
        Set<Integer> reached = new HashSet<>(nets);
        charged.stream().mapToObj(this::nets).forEach(joined -> {
            if (joined.stream().anyMatch(nets::contains)) {
                reached.addAll(joined);
            }
        });
        BitSet touching = new BitSet();
        keys.forEach(key -> touching.or(inKey.get(key)));
        reached.forEach(net -> touching.or(onNet.get(net)));
        return touching;
    }
}
