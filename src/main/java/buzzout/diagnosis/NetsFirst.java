package buzzout.diagnosis;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * Looks for explanations among the faults of nets alone; the keys then choose for themselves. There are far fewer of
 * those, and a wrong one shows at once in many keys.
 *
 * <p>From a start it climbs by one fault more, one less, or one for another. From the top it tries again with a fault
 * that ties or exchanges nets and has to stay, beside what is there or in place of it (iterated local search, Lourenço,
 * Martin and Stützle 2003, from memory).
 */
final class NetsFirst {
    /** Some seconds' worth; counted and not timed, so that a replay comes to the same. */
    private static final int MOST_DRAFTS = 60_000;

    private static final int MOST_PAIRS = 10;
    private static final int MOST_LONE = 20;
    private static final int MOST_IN_VAIN = 60;
    private static final int MOST_PAIRED = 30;
    private static final double WORTH_CLIMBING = 15;

    private final Charges charges;
    private final KeysChoice choice;
    private final BitSet candidates;
    private final Map<SetOfFaults, Double> scores = new HashMap<>();
    private final BooleanSupplier isUrgent;
    private final Case board;
    private final int mostDrafts;
    private int left;
    private boolean cutShort;

    NetsFirst(Case board, BooleanSupplier isUrgent) {
        this(board, isUrgent, MOST_DRAFTS);
    }

    NetsFirst(Case board, BooleanSupplier isUrgent, int mostDrafts) {
        this.mostDrafts = mostDrafts;
        this.board = board;
        this.isUrgent = isUrgent;
        charges = board.charges();
        choice = new KeysChoice(board);
        candidates = charges.lastingOfNets();
    }

    /** The best that is found from these starts; from all but the best of them by climbing alone if that explains all. */
    Hypothesis best(List<Hypothesis> starts) {
        List<Draft> climbed = starts.stream()
                .map(start -> climbed(start(start)))
                .distinct()
                .sorted(Comparator.comparingDouble(Draft::score).reversed())
                .toList();
        Hypothesis best = starts.get(0);
        for (Draft start : climbed) {
            Hypothesis found = board.weigh(charged(top(start)));
            best = found.score() > best.score() ? found : best;
            if (board.costs(best).isEmpty()) {
                break;
            }
        }
        return best;
    }

    /** The best that is found by climbing alone. */
    Hypothesis byClimbing(Hypothesis start) {
        return board.weigh(charged(climbed(start(start))));
    }

    /** Whether it gave up before it had tried all that it knows. */
    boolean wasCutShort() {
        return cutShort;
    }

    private BitSet charged(Draft draft) {
        return choice.charged(draft.nets());
    }

    private Draft start(Hypothesis start) {
        BitSet kept = (BitSet) candidates.clone();
        kept.or(charges.held());
        kept.and(start.charged());
        return draft(kept);
    }

    private Draft climbed(Draft start) {
        left = mostDrafts;
        return climbed(start, new BitSet(), true);
    }

    /**
     * Faults of nets, the keys' own left to choose.
     *
     * @param nets numbers of faults; never changed
     * @param score what it weighs with the keys' own, apart from trials
     */
    private record Draft(BitSet nets, double score) {}

    /** A draft that grew by kicks, one of which has to stay. */
    private record Kicked(int tie, Draft draft) {
        static final Comparator<Kicked> BEST_FIRST = Comparator.comparingDouble(
                        (Kicked kicked) -> kicked.draft().score())
                .reversed();
    }

    private record Bound(int fault, double most) {}

    private Draft draft(BitSet nets) {
        double score = scores.computeIfAbsent(new SetOfFaults(nets), any -> {
            left--;
            return choice.score(nets);
        });
        return new Draft(nets, score);
    }

    private Draft top(Draft start) {
        left = mostDrafts;
        Draft best = start;
        while (true) {
            Draft better = kicked(best);
            if (!isBetter(better, best)) {
                return best;
            }
            best = climbed(better, new BitSet(), true);
        }
    }

    private boolean isOver() {
        cutShort |= left <= 0;
        return left <= 0 || isUrgent.getAsBoolean();
    }

    private static boolean isBetter(Draft one, Draft other) {
        return one.score() > other.score() + 1e-9;
    }

    private Draft climbed(Draft start, BitSet staying, boolean exchanging) {
        Draft best = start;
        while (true) {
            Draft better = step(best, staying, exchanging);
            if (!isBetter(better, best)) {
                return best;
            }
            best = better;
        }
    }

    /** One fault more or less; where neither is better, one for another. */
    private Draft step(Draft from, BitSet staying, boolean exchanging) {
        List<Draft> fewer = from.nets().stream()
                .filter(gone -> !staying.get(gone))
                .mapToObj(gone -> draft(SetOfFaults.without(from.nets(), gone)))
                .toList();
        Draft best = withOneMore(
                from, from, exchanging || charges.exchanges().intersects(staying) ? Integer.MAX_VALUE : MOST_IN_VAIN);
        for (Draft less : fewer) {
            best = isBetter(less, best) ? less : best;
        }
        if (exchanging && !isBetter(best, from)) {
            for (Draft less : fewer) {
                best = withOneMore(less, best, Integer.MAX_VALUE);
            }
        }
        return best;
    }

    /** What is to beat, or what is better with one fault more. */
    private Draft withOneMore(Draft from, Draft toBeat, int patience) {
        Draft best = toBeat;
        int since = 0;
        for (Bound bound : bounds(from)) {
            if (since++ > patience || from.score() + bound.most() <= best.score() + 1e-9 || isOver()) {
                break;
            }
            if (charges.canJoin(from.nets(), bound.fault())) {
                Draft more = draft(SetOfFaults.with(from.nets(), bound.fault()));
                if (isBetter(more, best)) {
                    best = more;
                    since = 0;
                }
            }
        }
        return best;
    }

    /** What each candidate could gain at most, if it paid for all that the nets in its reach owe; the most first. */
    private List<Bound> bounds(Draft from) {
        return bounds(from, choice.burdens(from.nets()));
    }

    /** The same if it paid for the faults of nets in its reach as well. */
    private List<Bound> boundsInPlace(Draft from) {
        List<KeysChoice.Burden> burdens = new ArrayList<>(choice.burdens(from.nets()));
        from.nets().stream()
                .forEach(fault -> burdens.add(new KeysChoice.Burden(charges.nets(fault), -charges.logOdds(fault))));
        return bounds(from, burdens);
    }

    private List<Bound> bounds(Draft from, List<KeysChoice.Burden> burdens) {
        List<Bound> bounds = new ArrayList<>();
        for (int fault = candidates.nextSetBit(0); fault >= 0; fault = candidates.nextSetBit(fault + 1)) {
            long reach = charges.joined(charges.nets(fault), from.nets());
            double most = charges.logOdds(fault);
            for (KeysChoice.Burden burden : burdens) {
                most += (burden.nets() & reach) == 0 ? 0 : burden.cost();
            }
            if (most > 0) {
                bounds.add(new Bound(fault, most));
            }
        }
        bounds.sort(Comparator.comparingDouble(Bound::most).reversed());
        return bounds;
    }

    /** The best that is found with a fault that ties nets and has to stay. */
    private Draft kicked(Draft from) {
        Set<Draft> seen = new HashSet<>();
        List<Kicked> climbed = kicks(from)
                .map(kick -> climbed(kick, false))
                .filter(kick -> seen.add(kick.draft()))
                .sorted(Kicked.BEST_FIRST)
                .toList();
        Draft best = from;
        for (Kicked kick : climbed) {
            if (kick.draft().score() < from.score() - WORTH_CLIMBING || isOver()) {
                break;
            }
            Draft found = climbed(kick, true).draft();
            if (isBetter(found, best)) {
                best = found;
                left = mostDrafts;
            }
        }
        return best;
    }

    private Kicked climbed(Kicked kick, boolean exchanging) {
        BitSet staying = new BitSet();
        staying.set(kick.tie());
        return new Kicked(kick.tie(), climbed(kick.draft(), staying, exchanging));
    }

    /** Each fault that exchanges nets and is not too rare, each tie that is there, and of the others the best. */
    private Stream<Kicked> kicks(Draft from) {
        BitSet first = (BitSet) charges.exchanges().clone();
        from.nets().stream().filter(charges::tiesNets).forEach(first::set);
        BitSet worthwhile = new BitSet();
        boundsInPlace(from).stream().map(Bound::fault).filter(charges::tiesNets).forEach(worthwhile::set);
        from.nets().stream().filter(charges::tiesNets).forEach(worthwhile::set);
        first.and(worthwhile);
        List<Kicked> all =
                worthwhile.stream().boxed().flatMap(tie -> tied(from, tie)).toList();
        Draft nothing = draft(new BitSet());
        return Stream.of(
                        all.stream().filter(kick -> first.get(kick.tie())),
                        first.stream().boxed().flatMap(tie -> tied(nothing, tie)),
                        all.stream()
                                .filter(kick -> !first.get(kick.tie()))
                                .sorted(Kicked.BEST_FIRST)
                                .limit(MOST_LONE),
                        paired(from, first).sorted(Kicked.BEST_FIRST).limit(MOST_PAIRS))
                .flatMap(each -> each);
    }

    /** With a tie beside what is there, and in place of all that sits on its nets. */
    private Stream<Kicked> tied(Draft from, int tie) {
        BitSet elsewhere = (BitSet) from.nets().clone();
        elsewhere.andNot(charges.onNets(charges.nets(tie)));
        return Stream.of(from.nets(), elsewhere)
                .distinct()
                .filter(base -> charges.canJoin(base, tie))
                .map(base -> new Kicked(tie, draft(SetOfFaults.with(base, tie))));
    }

    /** The same with one more fault on the nets of the tie. */
    private Stream<Kicked> paired(Draft from, BitSet first) {
        BitSet ties = (BitSet) first.clone();
        List<Bound> bounds = bounds(from);
        bounds.stream()
                .filter(bound -> charges.tiesNets(bound.fault())
                        && 2 * bound.most() >= bounds.get(0).most())
                .limit(MOST_PAIRED)
                .forEach(bound -> ties.set(bound.fault()));
        return ties.stream().boxed().flatMap(tie -> tied(from, tie)).flatMap(kick -> {
            BitSet there = charges.onNets(charges.nets(kick.tie()));
            there.and(candidates);
            return there.stream()
                    .filter(fault -> charges.canJoin(kick.draft().nets(), fault))
                    .mapToObj(fault -> new Kicked(
                            kick.tie(), draft(SetOfFaults.with(kick.draft().nets(), fault))));
        });
    }
}
