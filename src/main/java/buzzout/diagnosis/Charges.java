package buzzout.diagnosis;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.Part;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Every fault that can be charged on a plan's board, by number, with its prior and its place. */
final class Charges {
    private final Plan plan;
    private final List<Fault> faults;
    private final double[] logOdds;
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
        plan.nets().forEach(net -> onNet.add(new BitSet()));
        plan.keys().forEach(key -> inKey.add(new BitSet()));
        Map<Part, BitSet> spoiling = new HashMap<>();
        for (int number = 0; number < faults.size(); number++) {
            Fault fault = faults.get(number);
            for (Part part : fault.parts()) {
                spoiling.computeIfAbsent(part, any -> new BitSet()).set(number);
            }
            int id = number;
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

    /** Faults that could change what these keys and pins show, beside what is charged already. */
    BitSet touching(Set<Integer> keys, Set<Integer> nets, BitSet charged) {
        Set<Integer> reached = new HashSet<>(nets);
        charged.stream().mapToObj(faults::get).map(fault -> fault.nets(plan)).forEach(joined -> {
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
