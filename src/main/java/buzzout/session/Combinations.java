package buzzout.session;

import buzzout.circuit.Circuit;
import buzzout.circuit.DiodeBypassed;
import buzzout.circuit.Layout;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Few combinations of at most four keys that prove every diode in company: whichever diode were bypassed, one of them
 * would show a pair that none of its keys closes alone.
 *
 * <p>A greedy cover (at most ln n + 1 times the fewest; Chvátal 1979, from memory) over squares of neighbours along rows and columns,
 * their corners and sides; then small ones are put together. What a combination shows is asked of the circuit model.
 */
public final class Combinations {
    /** Two fingers of each hand. */
    private static final int MOST_HELD = 4;

    private final Plan plan;
    private final Layout layout;
    private final Set<Integer> usable;
    private final Map<Integer, Circuit> bypassed = new HashMap<>();
    private final Map<Set<Integer>, Set<Integer>> proven = new HashMap<>();

    private Combinations(Plan plan, Set<Integer> usable) {
        this.plan = plan;
        this.usable = new TreeSet<>(usable);
        layout = new Layout(plan);
    }

    /** Combinations of these keys; a key that shares no net with another of them is in none. */
    public static List<Set<Integer>> proving(Plan plan, Set<Integer> usable) {
        return new Combinations(plan, usable).chosen();
    }

    private List<Set<Integer>> chosen() {
        Set<Set<Integer>> candidates = candidates();
        Set<Integer> unproven = new TreeSet<>(usable);
        List<Set<Integer>> chosen = new ArrayList<>();
        while (true) {
            Optional<Set<Integer>> best = best(candidates, unproven);
            if (best.isEmpty()) {
                return merged(chosen);
            }
            chosen.add(best.get());
            unproven.removeAll(provenBy(best.get()));
        }
    }

    /** The candidate that proves most of what is not yet proven; of equal ones the one with the fewest keys. */
    private Optional<Set<Integer>> best(Set<Set<Integer>> candidates, Set<Integer> unproven) {
        Optional<Set<Integer>> best = Optional.empty();
        long most = 0;
        for (Set<Integer> candidate : candidates) {
            long gain = provenBy(candidate).stream().filter(unproven::contains).count();
            boolean smaller = best.isPresent() && candidate.size() < best.get().size();
            if (gain > most || (gain > 0 && gain == most && smaller)) {
                best = Optional.of(candidate);
                most = gain;
            }
        }
        return best;
    }

    /** Puts combinations together that hold no more than four keys so and still prove what each of them proved. */
    private List<Set<Integer>> merged(List<Set<Integer>> chosen) {
        List<Set<Integer>> merged = new ArrayList<>();
        for (Set<Integer> each : chosen) {
            boolean put = false;
            for (int index = 0; index < merged.size() && !put; index++) {
                Set<Integer> both = new TreeSet<>(merged.get(index));
                both.addAll(each);
                if (both.size() <= MOST_HELD
                        && provenBy(both).containsAll(provenBy(each))
                        && provenBy(both).containsAll(provenBy(merged.get(index)))) {
                    merged.set(index, both);
                    put = true;
                }
            }
            if (!put) {
                merged.add(each);
            }
        }
        return merged;
    }

    /** The keys whose diode, were it bypassed, would show only in this company. */
    private Set<Integer> provenBy(Set<Integer> keys) {
        return proven.computeIfAbsent(keys, held -> {
            Set<Integer> shown = new TreeSet<>();
            for (int key : held) {
                if (showsOnlyInCompany(key, held)) {
                    shown.add(key);
                }
            }
            return shown;
        });
    }

    private boolean showsOnlyInCompany(int key, Set<Integer> held) {
        Circuit faulty = bypassed.computeIfAbsent(key, index -> Circuit.of(layout, List.of(new DiodeBypassed(index))));
        BitSet down = new BitSet();
        held.forEach(down::set);
        Pairs alone = Pairs.NONE;
        for (int each : held) {
            alone = alone.plus(faulty.pressed(plan.keys().get(each)).low());
        }
        return !faulty.read(down).low().minus(alone).isEmpty();
    }

    private Set<Set<Integer>> candidates() {
        Map<Long, Integer> at = new HashMap<>();
        usable.forEach(index -> at.put(crossing(plan.keys().get(index)), index));
        Set<Set<Integer>> candidates = new LinkedHashSet<>();
        for (int index : usable) {
            Key key = plan.keys().get(index);
            Optional<Key> beside = next(plan.row(key), index);
            Optional<Key> below = next(plan.column(key), index);
            beside.ifPresent(each -> candidates.add(sorted(index, each.index())));
            below.ifPresent(each -> candidates.add(sorted(index, each.index())));
            if (beside.isPresent() && below.isPresent()) {
                int right = beside.get().index();
                int under = below.get().index();
                candidates.add(sorted(index, right, under));
                Integer across = at.get(crossing(below.get().row(), beside.get().column()));
                if (across != null) {
                    candidates.add(sorted(index, right, under, across));
                }
            }
        }
        return candidates;
    }

    /** The next usable key along a net. */
    private Optional<Key> next(Net net, int key) {
        return net.joints().stream()
                .skip(net.jointOf(key) + 1L)
                .filter(usable::contains)
                .findFirst()
                .map(plan.keys()::get);
    }

    private static Set<Integer> sorted(Integer... keys) {
        return new TreeSet<>(List.of(keys));
    }

    private static long crossing(Key key) {
        return crossing(key.row(), key.column());
    }

    private static long crossing(int row, int column) {
        return (long) row << Integer.SIZE | column;
    }
}
