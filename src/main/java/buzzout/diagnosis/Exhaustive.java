package buzzout.diagnosis;

import buzzout.circuit.Fault;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The posterior probability of every fault, over all sets of up to a given number of faults.
 *
 * <p>With f faults in the catalogue and sets of up to k it weighs about f^k/k! of them: for boards of a dozen keys.
 */
public final class Exhaustive {
    /** So many take some 20 ms. */
    private static final double MOST_SETS = 60_000;

    private record Weighed(BitSet charged, double weight) {}

    private final Case board;
    private final int mostFaults;
    private final Tolerance nothing;
    private final double[] weightOf;
    private final List<Weighed> sets = new ArrayList<>();
    private double total;
    private Hypothesis best;

    private Exhaustive(Case board, int mostFaults) {
        this.board = board;
        this.mostFaults = mostFaults;
        nothing = new Tolerance(board, Map.of(), java.util.Set.of());
        weightOf = new double[board.charges().count()];
        best = board.weigh(new BitSet());
        weigh(best, 0);
    }

    /** All sets, where the board is so small that they can be weighed while the person presses. */
    static Optional<Exhaustive> of(Case board) {
        double faults = board.charges().count();
        int most = faults * faults * faults / 6 <= MOST_SETS ? 3 : 2;
        return Math.pow(faults, most) / (most == 3 ? 6 : 2) <= MOST_SETS
                ? Optional.of(new Exhaustive(board, most))
                : Optional.empty();
    }

    /** The probability of each fault that the plan's board can have. */
    public static Map<Fault, Double> posterior(Plan plan, Priors priors, Evidence evidence, int mostFaults) {
        Case board = new Case(plan, priors);
        board.take(evidence);
        Exhaustive exhaustive = new Exhaustive(board, mostFaults);
        Map<Fault, Double> posterior = new HashMap<>();
        for (int number = 0; number < board.charges().count(); number++) {
            posterior.put(board.charges().fault(number), exhaustive.weightOf[number] / exhaustive.total);
        }
        return posterior;
    }

    /** The most probable of all sets. */
    Hypothesis best() {
        return best;
    }

    /** The probability of one fault. */
    double probability(int fault) {
        return weightOf[fault] / total;
    }

    /** The probability that the board has at least one of these faults. */
    double probabilityOfAny(BitSet faults) {
        double weight = 0;
        for (Weighed set : sets) {
            if (set.charged().intersects(faults)) {
                weight += set.weight();
            }
        }
        return weight / total;
    }

    private void weigh(Hypothesis hypothesis, int next) {
        double weight = Math.exp(hypothesis.score());
        total += weight;
        sets.add(new Weighed(hypothesis.charged(), weight));
        best = hypothesis.score() > best.score() ? hypothesis : best;
        BitSet charged = hypothesis.charged();
        for (int fault = charged.nextSetBit(0); fault >= 0; fault = charged.nextSetBit(fault + 1)) {
            weightOf[fault] += weight;
        }
        if (charged.cardinality() == mostFaults) {
            return;
        }
        Weights weights = board.weights(hypothesis.forecast());
        Change change = new Change();
        for (int fault = next; fault < board.charges().count(); fault++) {
            if (!board.charges().canJoin(charged, fault)) {
                continue;
            }
            Forecast forecast = board.forecasts().with(charged, hypothesis.forecast(), fault);
            weights.compare(forecast, nothing, change);
            BitSet more = (BitSet) charged.clone();
            more.set(fault);
            weigh(
                    new Hypothesis(
                            more,
                            hypothesis.logPrior() + board.charges().logOdds(fault),
                            forecast,
                            hypothesis.logLikelihood() + change.cost()),
                    fault + 1);
        }
    }
}
