package buzzout.diagnosis;

import buzzout.plan.Net;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns what a search found in place of one fault into a finding. */
final class Findings {
    /** Suspects less probable than this are not named. */
    private static final double WORTH_NAMING = 0.005;

    /** Probabilities nearer than this are the same but for rounding. */
    private static final double TIE = 1e-9;

    /** A finding, and what would settle it while it is not sure. */
    record Told(Finding finding, Optional<Settle> settle) {
        Told discounted(double by) {
            return new Told(finding.discounted(by), settle);
        }
    }

    private Findings() {}

    /** Probabilities are those of the strand's own alternatives, or over all sets of faults where those were weighed. */
    static Told of(
            Case board,
            Hypothesis explanation,
            Strand strand,
            Optional<Exhaustive> exhaustive,
            Settling settling,
            boolean hasTime) {
        Hypothesis base = strand.base();
        Search.Result result = strand.result();
        double total = total(result);
        Map<Integer, Double> weights = new HashMap<>();
        BitSet same = new BitSet();
        for (Hypothesis hypothesis : result.weighed()) {
            BitSet added = (BitSet) hypothesis.charged().clone();
            added.andNot(base.charged());
            double weight = weight(hypothesis, result) / total;
            for (int number = added.nextSetBit(0); number >= 0; number = added.nextSetBit(number + 1)) {
                weights.merge(number, weight, Double::sum);
            }
            if (added.cardinality() == 1 && Math.abs(hypothesis.logLikelihood() - explanation.logLikelihood()) < 1e-9) {
                same.set(added.nextSetBit(0));
            }
        }
        same.set(strand.fault());
        BitSet instead = inPlaceOf(same, base, result);
        List<Suspect> suspects = new ArrayList<>();
        List<Suspect> otherwise = new ArrayList<>();
        exhaustive.ifPresent(all -> weights.replaceAll((number, weight) -> all.probability(number)));
        for (Map.Entry<Integer, Double> weight : weights.entrySet()) {
            int number = weight.getKey();
            Suspect suspect = new Suspect(board.charges().fault(number), Math.min(1, weight.getValue()));
            if (same.get(number)) {
                suspects.add(suspect);
            } else if (weight.getValue() >= WORTH_NAMING && instead.get(number)) {
                otherwise.add(suspect);
            }
        }
        Comparator<Suspect> order = (one, other) -> {
            int likelier = Double.compare(Math.rint(other.probability() / TIE), Math.rint(one.probability() / TIE));
            return likelier != 0
                    ? likelier
                    : one.fault().code(board.plan()).compareTo(other.fault().code(board.plan()));
        };
        suspects.sort(order);
        otherwise.sort(order);
        double probability =
                exhaustive.map(all -> all.probabilityOfAny(same)).orElseGet(() -> weightOfAny(same, result) / total);
        Optional<Settle> settle = settling.of(board, strand, suspects, hasTime);
        Finding finding = new Finding(
                suspects,
                otherwise,
                Math.min(1, probability),
                Because.of(board, strand.duties(), base.forecast()),
                Again.sentence(board, strand, probability).or(() -> settle.flatMap(Settle::best)));
        return new Told(finding, settle);
    }

    /** The faults of hypotheses without any of these. */
    private static BitSet inPlaceOf(BitSet suspects, Hypothesis base, Search.Result result) {
        BitSet instead = new BitSet();
        for (Hypothesis hypothesis : result.weighed()) {
            if (!hypothesis.charged().intersects(suspects)) {
                instead.or(hypothesis.charged());
            }
        }
        instead.andNot(base.charged());
        return instead;
    }

    private static double total(Search.Result result) {
        double total = 0;
        for (Hypothesis hypothesis : result.weighed()) {
            total += weight(hypothesis, result);
        }
        return total;
    }

    private static double weightOfAny(BitSet faults, Search.Result result) {
        double weight = 0;
        for (Hypothesis hypothesis : result.weighed()) {
            weight += hypothesis.charged().intersects(faults) ? weight(hypothesis, result) : 0;
        }
        return weight;
    }

    /** Beside the best one. */
    private static double weight(Hypothesis hypothesis, Search.Result result) {
        return Math.exp(hypothesis.score() - result.best().score());
    }

    static double unexplored(Search.Result result) {
        if (Double.isInfinite(result.unexplored())) {
            return 1;
        }
        return result.unexplored() / (result.unexplored() + total(result));
    }

    static List<String> troubles(Case board, Hypothesis explanation) {
        List<String> troubles = new ArrayList<>();
        board.ledger()
                .fallen()
                .forEach(net -> troubles.add(fell(board.charges().plan().nets().get(net))));
        for (Map.Entry<Term, Double> cost : board.costs(explanation).entrySet()) {
            if (cost.getValue() < Slips.REPEAT) {
                troubles.add(Because.unexplained(board, cost.getKey(), explanation.forecast()));
            }
        }
        return troubles;
    }

    private static String fell(Net net) {
        return net.name() + " read low for a moment whatever was driven, which no key does: its wire touches ground at"
                + " times; unplug, then look along " + net.name() + " and at pin " + net.pin() + " for a bare strand or"
                + " solder that reaches ground";
    }
}
