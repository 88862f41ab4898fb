package buzzout.diagnosis;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.Layout;
import buzzout.circuit.Reading;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every set of up to so many faults of a small board, each asked of the circuit once, to be weighed again and again. */
final class PlainEnumeration {
    private final Plan plan;
    private final Priors priors;
    private final Layout layout;
    private final List<Fault> faults;
    private final List<Entry> entries = new ArrayList<>();
    private final Map<Reading, Integer> numbers = new HashMap<>();
    private final List<Reading> readings = new ArrayList<>();

    /** A set of faults, and its quiet sweep and answers as numbers of readings. */
    private record Entry(
            List<Fault> faults, double logPrior, int quiet, List<Integer> answers, PlainModel.Shown shown) {}

    /** For every set, what a trial reads, as the number of the reading. */
    private final Map<Hands, int[]> tried = new HashMap<>();

    PlainEnumeration(Plan plan, Priors priors, int mostFaults) {
        this.plan = plan;
        this.priors = priors;
        layout = new Layout(plan);
        faults = Catalogue.of(plan);
        enumerate(new ArrayList<>(), 0, mostFaults);
    }

    private void enumerate(List<Fault> chosen, int next, int left) {
        PlainModel.Shown shown = PlainModel.Shown.by(layout, plan, chosen);
        entries.add(new Entry(
                List.copyOf(chosen),
                PlainModel.logPrior(priors, chosen),
                number(shown.quiet()),
                shown.answers().stream().map(this::number).toList(),
                shown));
        for (int index = next; left > 0 && index < faults.size(); index++) {
            Fault fault = faults.get(index);
            if (chosen.stream().allMatch(other -> Collections.disjoint(other.parts(), fault.parts()))) {
                chosen.add(fault);
                enumerate(chosen, index + 1, left - 1);
                chosen.remove(chosen.size() - 1);
            }
        }
    }

    private int number(Reading reading) {
        return numbers.computeIfAbsent(reading, any -> {
            readings.add(reading);
            return readings.size() - 1;
        });
    }

    private int[] tried(Hands hands) {
        return tried.computeIfAbsent(
                hands,
                any -> entries.stream()
                        .mapToInt(entry -> number(entry.shown().tried(layout, plan, entry.faults(), hands)))
                        .toArray());
    }

    int sets() {
        return entries.size();
    }

    Weighed weigh(Evidence evidence) {
        PlainModel model = new PlainModel(plan, evidence);
        Map<Hands, int[]> trials = new LinkedHashMap<>();
        model.tried().forEach(hands -> trials.put(hands, tried(hands)));
        double[] ofQuiet = readings.stream().mapToDouble(model::quietCost).toArray();
        double[][] ofKey = new double[plan.keys().size()][];
        Arrays.setAll(
                ofKey,
                key -> readings.stream()
                        .mapToDouble(reading -> model.keyCost(key, reading))
                        .toArray());
        double[] scores = new double[entries.size()];
        for (int at = 0; at < scores.length; at++) {
            Entry entry = entries.get(at);
            double score = entry.logPrior() + ofQuiet[entry.quiet()];
            for (int key = 0; key < ofKey.length; key++) {
                score += ofKey[key][entry.answers().get(key)];
            }
            if (model.hasFreePlay()) {
                score += model.freePlayCost(
                        entry.answers().stream().map(readings::get).toList());
            }
            for (Map.Entry<Hands, int[]> trial : trials.entrySet()) {
                score += model.triedCost(trial.getKey(), readings.get(trial.getValue()[at]));
            }
            scores[at] = score;
        }
        return new Weighed(scores);
    }

    /** The posterior over the sets. */
    final class Weighed {
        private final double[] scores;
        private final double best;
        private final double total;

        private Weighed(double[] scores) {
            this.scores = scores;
            best = Arrays.stream(scores).max().orElseThrow();
            total = Arrays.stream(scores).map(score -> Math.exp(score - best)).sum();
        }

        /** The score of the most probable set. */
        double best() {
            return best;
        }

        /** The most probable set. */
        List<Fault> bestSet() {
            int at = 0;
            while (scores[at] < best) {
                at++;
            }
            return entries.get(at).faults();
        }

        /** The probability of each fault. */
        Map<Fault, Double> posterior() {
            Map<Fault, Double> posterior = new HashMap<>();
            faults.forEach(fault -> posterior.put(fault, 0.0));
            for (int at = 0; at < scores.length; at++) {
                double probability = Math.exp(scores[at] - best) / total;
                entries.get(at).faults().forEach(fault -> posterior.merge(fault, probability, Double::sum));
            }
            return posterior;
        }

        /** The probability that the board has at least one of these. */
        double ofAny(List<Fault> suspects) {
            double sum = 0;
            for (int at = 0; at < scores.length; at++) {
                if (!Collections.disjoint(entries.get(at).faults(), suspects)) {
                    sum += Math.exp(scores[at] - best) / total;
                }
            }
            return sum;
        }
    }
}
