package buzzout.diagnosis;

import buzzout.circuit.Fault;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Weighs evidence against the circuit model. Not safe for use by several threads.
 *
 * <p>It looks for the most probable explanation by explaining one term after another, starting from the last
 * explanation, and where many faults are tangled, by faults of nets first; then it takes each fault of that explanation
 * out in turn and enumerates what else could stand in for it.
 */
public final class Engine {
    private static final int MOST_ROUNDS = 8;
    private static final int MOST_THINNED = 16;
    private static final int MOST_LONE = 4;
    /** So many faults may be what others of nets look like. */
    private static final int FEWEST_TANGLED = 5;
    /** Fewer where each answer may be any key's. */
    private static final int FEWEST_TANGLED_FREELY = 3;

    /** Some seconds' worth, spent only where much contradicts each other. */
    private static final int MOST_BRANCHES = 4_000;

    private static final String CUT_SHORT =
            "So much of what came contradicts the rest that the search for explanations was"
                    + " cut short; there may be a better one.";
    private static final Comparator<Findings.Told> SUREST_FIRST = (one, other) ->
            Double.compare(other.finding().probability(), one.finding().probability());
    private static final Comparator<Map.Entry<Term, Double>> HEAVIEST_FIRST =
            (one, other) -> Double.compare(one.getValue(), other.getValue());

    private final Case board;
    private final int mostBranches;
    Hypothesis explanation;
    /** The last explanation that was no mere glance's; what is glanced one press after another adds up to folly. */
    private Hypothesis considered;

    private List<Strand> strands = List.of();
    private Optional<Exhaustive> exhaustive = Optional.empty();
    private Evidence weighed = Evidence.NONE;
    private final Settling settling = new Settling();
    private boolean rough;
    private boolean cutShort;

    public Engine(Plan plan) {
        this(plan, Priors.of(plan));
    }

    public Engine(Plan plan, Priors priors) {
        this(plan, priors, MOST_BRANCHES);
    }

    Engine(Plan plan, Priors priors, int mostBranches) {
        this(new Forecasts(plan, priors), mostBranches);
    }

    /** One that shares its forecasts with others, of which only one weighs at a time. */
    Engine(Forecasts forecasts) {
        this(forecasts, MOST_BRANCHES);
    }

    private Engine(Forecasts forecasts, int mostBranches) {
        this.mostBranches = mostBranches;
        board = new Case(forecasts);
        explanation = board.weigh(new BitSet());
        considered = explanation;
    }

    /** What is wrong, after this evidence. Fast when it only grew since the last call. */
    public Diagnosis weigh(Evidence evidence) {
        return weigh(evidence, Effort.thorough(() -> false)).orElseThrow();
    }

    /**
     * What is wrong as far as a short look tells, within some milliseconds: {@link #isRough} says whether a {@linkplain
     * #ponder thorough look} may find better.
     */
    public Diagnosis glance(Evidence evidence) {
        return glance(evidence, Effort.handsTime());
    }

    Diagnosis glance(Evidence evidence, BooleanSupplier isOver) {
        return weigh(evidence, Effort.brief(isOver)).orElseThrow();
    }

    /** What is wrong, after this evidence; nothing where something more urgent turned up before the end. */
    public Optional<Diagnosis> ponder(Evidence evidence, BooleanSupplier isOverdue) {
        return weigh(evidence, Effort.thorough(isOverdue));
    }

    /** Whether the last look was too short to be sure that no explanation is better, or to say what would settle it. */
    public boolean isRough() {
        return rough || settling.isOwed();
    }

    private Optional<Diagnosis> weigh(Evidence evidence, Effort effort) {
        // What explained evidence that was taken back explains the rest too, and would never be doubted again.
        boolean continued = evidence.continues(weighed);
        weighed = evidence;
        boolean nothingNewTried = board.take(evidence);
        if (!nothingNewTried) {
            explanation = board.weigh(explanation.charged());
        }
        if (!nothingNewTried || !continued) {
            strands = List.of();
        }
        exhaustive = Exhaustive.of(board);
        Hypothesis again = board.again(explanation);
        boolean asExpected =
                nothingNewTried && continued && Math.abs(again.logLikelihood() - explanation.logLikelihood()) < 1e-9;
        explanation = again;
        if (asExpected && !(rough && effort.thorough())) {
            List<Strand> weighedAgain = new ArrayList<>();
            for (Strand strand : strands) {
                weighedAgain.add(strand.again(board, explanation));
            }
            strands = weighedAgain;
        } else {
            Hypothesis glanced = explanation;
            boolean wasCutShort = cutShort;
            if (rough && effort.thorough()) {
                explanation = board.weigh(considered.charged());
            }
            Unravelling unravelling = unravelled(glanced, effort);
            board.forgetSearches();
            if (effort.thorough() && effort.isOverdue().getAsBoolean()) {
                rough = true;
                explanation = glanced;
                cutShort = wasCutShort;
                return Optional.empty();
            }
            explanation = unravelling.explanation();
            strands = unravelling.strands();
            rough = unravelling.rough();
        }
        considered = rough ? considered : explanation;
        return Optional.of(diagnosis(effort.thorough()));
    }

    private Diagnosis diagnosis(boolean hasTime) {
        settling.start();
        double anotherBoard = AnotherBoard.probability(board.ledger(), explanation);
        List<Strand> standing = new ArrayList<>();
        List<Findings.Told> told = new ArrayList<>();
        double unexplored = 0;
        for (Strand strand : strands) {
            unexplored = Math.max(unexplored, strand.unexplored());
            if (strand.holdsItsFault()) {
                standing.add(strand);
                told.add(Findings.of(board, explanation, strand, exhaustive, settling, hasTime)
                        .discounted(1 - anotherBoard));
            }
        }
        List<Integer> again = Again.keys(board, explanation, standing, findings(told));
        told.sort(SUREST_FIRST);
        List<NextStep> next = settling.isOwed() ? List.of() : settling.ranked(unsettled(told));
        List<String> troubles = new ArrayList<>(Findings.troubles(board, explanation));
        if (cutShort) {
            troubles.add(0, CUT_SHORT);
        }
        if (anotherBoard > AnotherBoard.WORTH_TELLING) {
            troubles.add(0, AnotherBoard.WARNING);
        }
        return new Diagnosis(findings(told), exhaustive.isPresent() ? 0 : unexplored, troubles, again, next);
    }

    private static List<Finding> findings(List<Findings.Told> told) {
        List<Finding> findings = new ArrayList<>();
        for (Findings.Told each : told) {
            findings.add(each.finding());
        }
        return findings;
    }

    private static List<Settle> unsettled(List<Findings.Told> told) {
        List<Settle> unsettled = new ArrayList<>();
        for (Findings.Told each : told) {
            each.settle().ifPresent(unsettled::add);
        }
        return unsettled;
    }

    /** The faults of the best explanation that the last weighing found. */
    List<Fault> explanation() {
        return board.charges().faults(explanation.charged());
    }

    /** An explanation, and for each of its faults what could stand in for it. */
    private record Unravelling(Hypothesis explanation, List<Strand> strands, boolean rough) {}

    private Unravelling unravelled(Hypothesis glanced, Effort wanted) {
        List<Strand> known = strands;
        BitSet before = explanation.charged();
        Patience patience = new Patience(mostBranches);
        cutShort = false;
        First first = firstExplanation(glanced, wanted.within(patience));
        cutShort |= patience.wasSpent();
        Hypothesis best = first.explanation();
        // No care is wasted on joints of a board that this plan does not describe.
        Effort effort = isAnotherBoard(best) ? wanted.inBrief() : wanted;
        for (int round = 0; ; round++) {
            List<Strand> found = new ArrayList<>();
            Hypothesis better = best;
            boolean rough = first.rough();
            BitSet charged = best.charged();
            for (int fault = charged.nextSetBit(0); fault >= 0; fault = charged.nextSetBit(fault + 1)) {
                Strand strand = strand(known, before, best, fault, effort);
                Hypothesis instead =
                        effort.thorough() ? thinnest(strand) : strand.result().best();
                if (instead.score() > better.score() + 1e-9) {
                    better = instead;
                }
                rough |= !wanted.thorough()
                        && (strand.unexplored() > 0 || (before.get(fault) && !isApart(before, best, fault)));
                found.add(strand);
            }
            boolean settled = better.charged().equals(best.charged());
            if (settled
                    || !effort.thorough()
                    || round == MOST_ROUNDS
                    || effort.isOverdue().getAsBoolean()) {
                return new Unravelling(best, found, !wanted.thorough() && (rough || !settled));
            }
            known = found;
            before = best.charged();
            best = explain(better, Search.Taste.WHOLE, HEAVIEST_FIRST, effort);
        }
    }

    /**
     * A strand for a fault of the explanation: a known one where only faults on other nets were added since, and at a
     * glance wherever there is one.
     */
    private Strand strand(List<Strand> known, BitSet before, Hypothesis now, int fault, Effort effort) {
        BitSet added = minus(now.charged(), before);
        BitSet gone = minus(before, now.charged());
        boolean goodEnough = !effort.thorough() || (!rough && isApart(before, now, fault));
        for (Strand strand : known) {
            if (goodEnough && strand.fault() == fault) {
                Strand beside = strand.beside(board, now, added, gone);
                return beside.result().weighed().isEmpty() ? Strand.of(board, now, fault, effort) : beside;
            }
        }
        return Strand.of(board, now, fault, effort);
    }

    /** Whether nothing is gone since, and all that was added sits on other nets than this fault. */
    private boolean isApart(BitSet before, Hypothesis now, int fault) {
        long nets = board.charges().nets(fault);
        BitSet added = minus(now.charged(), before);
        for (int other = added.nextSetBit(0); other >= 0; other = added.nextSetBit(other + 1)) {
            if ((board.charges().nets(other) & nets) != 0) {
                return false;
            }
        }
        return minus(before, now.charged()).isEmpty();
    }

    private static BitSet minus(BitSet faults, BitSet others) {
        BitSet left = (BitSet) faults.clone();
        left.andNot(others);
        return left;
    }

    /** The best of what could stand in for a fault and, at the same time, makes others needless. */
    private Hypothesis thinnest(Strand strand) {
        List<Hypothesis> weighedThere = strand.result().weighed();
        Hypothesis best = thinned(weighedThere.get(0));
        for (int place = 1; place < Math.min(MOST_THINNED, weighedThere.size()); place++) {
            best = better(best, thinned(weighedThere.get(place)));
        }
        return best;
    }

    /** Without the faults that do not pay for themselves. */
    private Hypothesis thinned(Hypothesis start) {
        Hypothesis thin = start;
        BitSet charged = start.charged();
        for (int fault = charged.nextSetBit(0); fault >= 0; fault = charged.nextSetBit(fault + 1)) {
            Hypothesis without = board.without(thin, fault);
            if (without.score() >= thin.score()) {
                thin = without;
            }
        }
        return thin;
    }

    private boolean isAnotherBoard(Hypothesis best) {
        return AnotherBoard.probability(board.ledger(), best) > 0.5;
    }

    private record First(Hypothesis explanation, boolean rough) {}

    /** The last explanation still, if it explains the new evidence too; else the best of several ways of looking. */
    private First firstExplanation(Hypothesis glanced, Effort effort) {
        Hypothesis same = thinned(explanation);
        if (board.costs(same).isEmpty()) {
            return new First(same, false);
        }
        Hypothesis quick = explain(same, Search.Taste.WHOLE, HEAVIEST_FIRST, effort.inBrief());
        if (isAnotherBoard(quick)) {
            return new First(quick, false);
        }
        boolean tangled = isTangled(quick);
        Hypothesis best = !effort.thorough()
                ? quick
                : explain(tangled ? orClimbed(quick, effort) : same, Search.Taste.WHOLE, HEAVIEST_FIRST, effort);
        if (!effort.thorough() || (isOneMore(best) && best.score() >= glanced.score())) {
            return new First(best, !isOneMore(best));
        }
        Hypothesis nothing = board.weigh(new BitSet());
        // Where much is wrong, thorough searches for one term after another get lost, and the nets tell more.
        Effort another = tangled ? effort.inBrief() : effort;
        if (!glanced.charged().equals(explanation.charged())) {
            best = orExplained(best, thinned(glanced), Search.Taste.WHOLE, HEAVIEST_FIRST, another);
        }
        if (exhaustive.isPresent()) {
            best = orExplained(best, exhaustive.get().best(), Search.Taste.WHOLE, HEAVIEST_FIRST, effort);
        }
        for (Search.Taste taste : Search.Taste.values()) {
            for (Comparator<Map.Entry<Term, Double>> order : List.of(HEAVIEST_FIRST, HEAVIEST_FIRST.reversed())) {
                best = orExplained(best, nothing, taste, order, another);
            }
        }
        // Where each answer is some key's, no term says which fault would account for it.
        if (board.ledger().matchesAnswers()) {
            best = grown(orFrom(OneMore.ofNets(board, MOST_LONE), best, effort));
            best = retied(best, effort);
        }
        return new First(isTangled(best) ? untangled(best, effort) : best, false);
    }

    /** The best, or what explains better from this start on. */
    private Hypothesis orExplained(
            Hypothesis best,
            Hypothesis start,
            Search.Taste taste,
            Comparator<Map.Entry<Term, Double>> order,
            Effort effort) {
        return better(best, explain(start, taste, order, effort, best.score()));
    }

    private boolean isTangled(Hypothesis found) {
        return found.charged().cardinality()
                >= (board.ledger().matchesAnswers() ? FEWEST_TANGLED_FREELY : FEWEST_TANGLED);
    }

    private Hypothesis orClimbed(Hypothesis best, Effort effort) {
        NetsFirst search = new NetsFirst(board, effort.isUrgent());
        Hypothesis climbed = search.byClimbing(board.weigh(new BitSet()));
        cutShort |= search.wasCutShort();
        return better(best, climbed);
    }

    /** The best, or what explains better by faults of nets found before those in keys. */
    private Hypothesis untangled(Hypothesis start, Effort effort) {
        List<Hypothesis> starts = List.of(start, board.weigh(new BitSet()));
        NetsFirst search = new NetsFirst(board, effort.isUrgent());
        Hypothesis best = better(start, search.best(starts));
        cutShort |= search.wasCutShort();
        return best.score() > start.score() + 1e-9 ? grown(best) : start;
    }

    /** The best, or what explains better from one of these on. */
    private Hypothesis orFrom(List<Hypothesis> starts, Hypothesis start, Effort effort) {
        Hypothesis best = start;
        for (Hypothesis other : starts) {
            if (other.logPrior() <= best.score()) {
                continue; // no evidence makes up for too many faults
            }
            best = orExplained(best, other, Search.Taste.WHOLE, HEAVIEST_FIRST, effort.inBrief());
        }
        return best;
    }

    /** The best, or what explains better with one more fault that ties or exchanges nets of its faults, and so on. */
    private Hypothesis retied(Hypothesis start, Effort effort) {
        Hypothesis best = orFrom(Retied.of(board, start, MOST_LONE), start, effort);
        return best.score() > start.score() + 1e-9 ? retied(grown(best), effort) : start;
    }

    private static Hypothesis better(Hypothesis best, Hypothesis found) {
        return found.score() > best.score() ? found : best;
    }

    /** With whatever faults pay for themselves, and without those that no longer do. */
    private Hypothesis grown(Hypothesis start) {
        Hypothesis best = start;
        while (true) {
            Hypothesis more = thinned(OneMore.best(board, best));
            if (more.score() <= best.score() + 1e-9) {
                return best;
            }
            best = more;
        }
    }

    /** Whether one more fault at most explains all that is new, and nothing hints at a disguise. */
    private boolean isOneMore(Hypothesis found) {
        return exhaustive.isEmpty()
                && found.charged().cardinality() <= explanation.charged().cardinality() + 1
                && board.costs(found).isEmpty()
                && board.charges().mostInKeysOfOneNet(found.charged()) < Disguise.FEWEST_TERMS;
    }

    private Hypothesis explain(
            Hypothesis start, Search.Taste taste, Comparator<Map.Entry<Term, Double>> order, Effort effort) {
        return explain(start, taste, order, effort, Double.NEGATIVE_INFINITY);
    }

    /** Given up once it has so many faults that it can hardly be better than what is to beat. */
    private Hypothesis explain(
            Hypothesis start,
            Search.Taste taste,
            Comparator<Map.Entry<Term, Double>> order,
            Effort effort,
            double toBeat) {
        Hypothesis sofar = start;
        Set<Term> slips = new HashSet<>();
        while (true) {
            Optional<Term> owed = firstOwed(board.costs(sofar), slips, order);
            if (owed.isEmpty()
                    || sofar.logPrior() < toBeat
                    || effort.isOverdue().getAsBoolean()) {
                return thinned(sofar);
            }
            Hypothesis found = best(sofar, owed.get(), taste, effort);
            if (found.score() <= sofar.score()) {
                slips.add(owed.get());
            } else {
                sofar = found;
            }
        }
    }

    private static Optional<Term> firstOwed(
            Map<Term, Double> costs, Set<Term> slips, Comparator<Map.Entry<Term, Double>> order) {
        Optional<Map.Entry<Term, Double>> first = Optional.empty();
        for (Map.Entry<Term, Double> cost : costs.entrySet()) {
            if (cost.getValue() < Slips.REPEAT
                    && !slips.contains(cost.getKey())
                    && (first.isEmpty() || order.compare(cost, first.get()) < 0)) {
                first = Optional.of(cost);
            }
        }
        return first.map(Map.Entry::getKey);
    }

    /** Of a term explained alone, with those on its row, and with those on its column: whatever explains best. */
    private Hypothesis best(Hypothesis start, Term term, Search.Taste taste, Effort effort) {
        Hypothesis best = Search.best(board, start, Set.of(term), taste, effort);
        for (Set<Term> alike : Alike.terms(board, start, term)) {
            Hypothesis found = Search.best(board, start, alike, taste, effort);
            best = better(best, found);
            if (effort.thorough() && alike.size() >= Disguise.FEWEST_TERMS && !isClean(start, best, alike)) {
                best = better(best, Disguise.best(board, start, alike));
            }
        }
        return best;
    }

    /** Whether a hypothesis explains all these terms and leaves no new ones unexplained. */
    private boolean isClean(Hypothesis start, Hypothesis found, Set<Term> terms) {
        Set<Term> tolerated = new HashSet<>(board.costs(start).keySet());
        tolerated.removeAll(terms);
        return tolerated.containsAll(board.costs(found).keySet());
    }
}
