package buzzout.diagnosis;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.Layout;
import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.plan.Joint;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a set of faults weighs under the definition that {@link Ledger} states, worked out afresh from the circuit.
 *
 * <p>It shares the table of slips and the priors with the engine, and nothing else. A forecast answer whose level is
 * doubtful somewhere is as probable as {@code ½} to the power of its doubtful pairs where what was seen agrees with it;
 * in free play its key is able to give each such answer, and is never missed when nothing came.
 */
final class PlainModel {
    /**
     * What a board with certain faults shows.
     *
     * @param answers for each key, what its press adds to the quiet sweep
     */
    record Shown(Reading quiet, List<Reading> answers) {
        static Shown by(Layout layout, Plan plan, Collection<? extends Fault> faults) {
            Circuit circuit = Circuit.of(layout, faults);
            Reading quiet = circuit.quiet();
            return new Shown(
                    quiet,
                    plan.keys().stream()
                            .map(circuit::pressed)
                            .map(pressed -> new Reading(
                                    pressed.low().minus(quiet.low()),
                                    pressed.between().minus(quiet.between())))
                            .toList());
        }
    }

    private Optional<Pairs> quiet = Optional.empty();
    private final Map<Integer, List<Pairs>> meant = new HashMap<>();
    private final Map<Pairs, Integer> came = new HashMap<>();
    private final Map<Joint, List<Pairs>> touched = new HashMap<>();
    private boolean everyKey;

    PlainModel(Evidence evidence) {
        for (Observation observation : evidence.observations()) {
            Pairs beyond = observation.seen().minus(quiet.orElse(Pairs.NONE));
            Hands hands = observation.hands();
            if (hands instanceof Hands.Off) {
                quiet = Optional.of(observation.seen());
            } else if (hands instanceof Hands.Meant press) {
                meant.computeIfAbsent(press.key(), any -> new ArrayList<>()).add(beyond);
            } else if (hands instanceof Hands.SomeKey) {
                came.merge(beyond, 1, Integer::sum);
            } else if (hands instanceof Hands.Touch touch) {
                touched.computeIfAbsent(touch.joint(), any -> new ArrayList<>()).add(beyond);
            } else if (hands instanceof Hands.EveryKey) {
                everyKey = true;
            }
        }
    }

    /** The logarithm of the odds of these faults before anything was seen. */
    static double logPrior(Priors priors, Collection<? extends Fault> faults) {
        return faults.stream()
                .mapToDouble(fault -> priors.logOdds(fault.kind()))
                .sum();
    }

    /** The logarithm of the weight of these faults against a faultless board that explains everything. */
    static double score(Plan plan, Priors priors, Evidence evidence, Collection<? extends Fault> faults) {
        return logPrior(priors, faults) + new PlainModel(evidence).logLikelihood(plan, faults);
    }

    private double logLikelihood(Plan plan, Collection<? extends Fault> faults) {
        Layout layout = new Layout(plan);
        return logLikelihood(Shown.by(layout, plan, faults))
                + touched.keySet().stream()
                        .mapToDouble(joint -> touchCost(joint, touch(layout, faults, joint)))
                        .sum();
    }

    /** What a touch adds to the quiet sweep of a board with these faults. */
    static Reading touch(Layout layout, Collection<? extends Fault> faults, Joint joint) {
        Circuit circuit = Circuit.of(layout, faults);
        Reading touched = circuit.touching(joint).quiet();
        return new Reading(
                touched.low().minus(circuit.quiet().low()),
                touched.between().minus(circuit.quiet().between()));
    }

    Set<Joint> joints() {
        return touched.keySet();
    }

    double touchCost(Joint joint, Reading forecast) {
        double cost = 0;
        for (Pairs seen : touched.getOrDefault(joint, List.of())) {
            if (forecast.agreesWith(seen)) {
                cost += forecast.between().count() * Slips.EITHER_WAY;
            } else {
                cost += seen.isEmpty() ? Slips.NO_CONTACT : Slips.OTHER_JOINT;
            }
        }
        return cost;
    }

    double logLikelihood(Shown shown) {
        double sum = quietCost(shown.quiet()) + freePlayCost(shown.answers());
        for (int key = 0; key < shown.answers().size(); key++) {
            sum += keyCost(key, shown.answers().get(key));
        }
        return sum;
    }

    double quietCost(Reading forecast) {
        if (quiet.isEmpty()) {
            return 0;
        }
        int misread =
                quiet.get().minus(forecast.low()).minus(forecast.between()).count()
                        + forecast.low().minus(quiet.get()).count();
        return misread * Slips.MISREAD + forecast.between().count() * Slips.EITHER_WAY;
    }

    double keyCost(int key, Reading forecast) {
        double cost = 0;
        for (Pairs seen : meant.getOrDefault(key, List.of())) {
            if (forecast.agreesWith(seen)) {
                cost += forecast.between().count() * Slips.EITHER_WAY;
            } else {
                cost += seen.isEmpty() ? Slips.NO_PRESS : Slips.OTHER_ANSWER;
            }
        }
        return cost;
    }

    boolean hasFreePlay() {
        return everyKey || !came.isEmpty();
    }

    double freePlayCost(List<Reading> answers) {
        if (!hasFreePlay()) {
            return 0;
        }
        Map<Pairs, Integer> sure = new HashMap<>();
        Map<Pairs, Integer> due = new HashMap<>();
        List<Reading> doubtful = new ArrayList<>();
        for (int key = 0; key < answers.size(); key++) {
            Reading answer = answers.get(key);
            if (!answer.between().isEmpty()) {
                doubtful.add(answer);
                continue;
            }
            sure.merge(answer.low(), 1, Integer::sum);
            if (!meant.containsKey(key)) {
                due.merge(answer.low(), 1, Integer::sum);
            }
        }
        double cost = 0;
        for (Map.Entry<Pairs, Integer> press : came.entrySet()) {
            Pairs answer = press.getKey();
            long able = sure.getOrDefault(answer, 0)
                    + doubtful.stream().filter(each -> each.agreesWith(answer)).count();
            if (able == 0) {
                cost += press.getValue() * Slips.STRAY;
            } else if (press.getValue() > able) {
                cost += Slips.REPEAT;
            }
        }
        for (Map.Entry<Pairs, Integer> owed : due.entrySet()) {
            int left = owed.getValue() - came.getOrDefault(owed.getKey(), 0);
            if (everyKey && !owed.getKey().isEmpty() && left > 0) {
                cost += left * Slips.LEFT_OUT;
            }
        }
        return cost;
    }
}
