package buzzout.report;

import buzzout.circuit.FaultKind;
import buzzout.diagnosis.Priors;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How probable one named fault of a kind is, by judgement and by what a batch showed.
 *
 * <p>The judged probability p counts as much as one fault found in 1/p places: a beta distribution with a = 1 and
 * b = 1/p − 1, whose mean is p and whose 90 % interval reaches from p/20 to 3p. Finding k faults in n places makes it a
 * beta distribution with k more for a and n − k more for b, the conjugate prior of binomial counts (Gelman and others,
 * <i>Bayesian Data Analysis</i>, chapter 2; memory).
 *
 * @param found faults of the kind found, each of a unit once
 * @param places where one could have been: named faults of the kind, over all units tested whole
 * @param judged the judged probability
 * @param proposed the mean of what is known now
 * @param low the 5 % point
 * @param high the 95 % point
 */
public record ProposedPrior(
        FaultKind kind, long found, long places, double judged, double proposed, double low, double high) {
    /** For each kind that the board can have, from the units of which every key was tested. */
    public static List<ProposedPrior> of(Batch batch) {
        List<UnitHistory> whole = whole(batch);
        Priors judged = Priors.judged();
        List<ProposedPrior> priors = new ArrayList<>();
        for (FaultKind kind : FaultKind.values()) {
            long places = whole.stream()
                    .mapToLong(unit -> kind.all(unit.plan()).size())
                    .sum();
            long found = whole.stream()
                    .flatMap(unit -> unit.faults().stream())
                    .filter(fault -> fault.kind() == kind)
                    .count();
            if (places > 0) {
                priors.add(of(
                        kind, found, places, Objects.requireNonNull(judged.of().get(kind))));
            }
        }
        return priors;
    }

    static ProposedPrior of(FaultKind kind, long found, long places, double judged) {
        Beta known = new Beta(1, 1 / judged - 1).after(found, places);
        return new ProposedPrior(kind, found, places, judged, known.mean(), known.quantile(0.05), known.quantile(0.95));
    }

    static List<UnitHistory> whole(Batch batch) {
        return batch.units().stream().filter(UnitHistory::isTestedWhole).toList();
    }
}
