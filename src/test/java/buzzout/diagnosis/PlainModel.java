package buzzout.diagnosis;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.Layout;
import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a set of faults weighs under the definition that {@link Ledger} states, worked out afresh from the circuit.
 *
 * <p>It shares the table of slips and the priors with the engine, and nothing else. A forecast answer whose level is
 * doubtful somewhere is as probable as {@code ½} to the power of its doubtful pairs where what was seen agrees with it;
 * in free play its key is able to give each such answer, and is never missed when nothing came; once every key was
 * pressed, each doubtful pair costs a half there too.
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
            Reading quiet = hanging(plan, circuit.quiet());
            return new Shown(
                    quiet,
                    plan.keys().stream()
                            .map(circuit::pressed)
                            .map(pressed -> beyond(quiet, hanging(plan, pressed)))
                            .toList());
        }

        /** Without the pairs of the spare pin, which count in touches only. */
        private static Reading hanging(Plan plan, Reading reading) {
            return new Reading(hanging(plan, reading.low()), hanging(plan, reading.between()));
        }

        private static Pairs hanging(Plan plan, Pairs pairs) {
            return Pairs.of(pairs.list().stream()
                    .filter(pair -> pair.low() < plan.nets().size()
                            && pair.reads() < plan.nets().size())
                    .toList());
        }

        private static Reading beyond(Reading quiet, Reading now) {
            return new Reading(now.low().minus(quiet.low()), now.between().minus(quiet.between()));
        }

        /** What a touch, or keys held together, add to the quiet sweep. */
        Reading tried(Layout layout, Plan plan, Collection<? extends Fault> faults, Hands hands) {
            if (hands instanceof Hands.Touch touch) {
                Circuit board = Circuit.of(layout, faults);
                return beyond(
                        board.quiet(),
                        board.touching(touch.net(), touch.joint()).quiet());
            }
            BitSet held = new BitSet();
            ((Hands.Together) hands).keys().forEach(held::set);
            return beyond(quiet, hanging(plan, Circuit.of(layout, faults).read(held)));
        }
    }

    private Optional<Pairs> quiet = Optional.empty();
    private final Map<Integer, List<Pairs>> meant = new HashMap<>();
    private final Map<Integer, List<Pairs>> read = new HashMap<>();
    private final Map<Integer, List<Pairs>> flexed = new HashMap<>();
    private final Map<Hands, List<Pairs>> tried = new LinkedHashMap<>();
    private final Map<Pairs, Integer> came = new HashMap<>();
    private boolean everyKey;

    PlainModel(Plan plan, Evidence evidence) {
        Pairs free = Pairs.NONE;
        for (Observation observation : evidence.observations()) {
            Hands hands = observation.hands();
            Pairs seen = hands instanceof Hands.Touch ? observation.seen() : Shown.hanging(plan, observation.seen());
            Pairs beyond = seen.minus(free);
            if (hands instanceof Hands.Off) {
                free = observation.seen();
                quiet = Optional.of(seen);
            } else if (hands instanceof Hands.Meant press) {
                meant.computeIfAbsent(press.key(), any -> new ArrayList<>()).add(beyond);
            } else if (hands instanceof Hands.Read turn) {
                read.computeIfAbsent(turn.key(), any -> new ArrayList<>()).add(beyond);
            } else if (hands instanceof Hands.SomeKey) {
                came.merge(beyond, 1, Integer::sum);
            } else if (hands instanceof Hands.Flexed held) {
                flexed.computeIfAbsent(held.key(), any -> new ArrayList<>()).add(beyond);
            } else if (hands instanceof Hands.Touch || hands instanceof Hands.Together) {
                tried.computeIfAbsent(hands, any -> new ArrayList<>()).add(beyond);
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
        return logPrior(priors, faults) + new PlainModel(plan, evidence).logLikelihood(new Layout(plan), plan, faults);
    }

    private double logLikelihood(Layout layout, Plan plan, Collection<? extends Fault> faults) {
        Shown shown = Shown.by(layout, plan, faults);
        double sum = logLikelihood(shown);
        for (Hands hands : tried.keySet()) {
            sum += triedCost(hands, shown.tried(layout, plan, faults, hands));
        }
        return sum;
    }

    /** Of everything but trials. */
    double logLikelihood(Shown shown) {
        double sum = quietCost(shown.quiet()) + freePlayCost(shown.answers());
        for (int key = 0; key < shown.answers().size(); key++) {
            sum += keyCost(key, shown.answers().get(key));
        }
        return sum;
    }

    Set<Hands> tried() {
        return tried.keySet();
    }

    double triedCost(Hands hands, Reading forecast) {
        double cost = 0;
        for (Pairs seen : tried.getOrDefault(hands, List.of())) {
            cost += cost(forecast, seen, Slips.TRIAL_SPOILT);
        }
        return cost;
    }

    private static double cost(Reading forecast, Pairs seen, double slip) {
        return forecast.agreesWith(seen) ? forecast.between().count() * Slips.EITHER_WAY : slip;
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
            cost += cost(forecast, seen, seen.isEmpty() ? Slips.NO_PRESS : Slips.OTHER_ANSWER);
        }
        for (Pairs seen : read.getOrDefault(key, List.of())) {
            cost += cost(forecast, seen, seen.isEmpty() ? Slips.SKIPPED : Slips.NEIGHBOUR);
        }
        for (Pairs seen : flexed.getOrDefault(key, List.of())) {
            cost += cost(forecast, seen, Slips.LET_GO);
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
        double cost = 0;
        Map<Pairs, Integer> sure = new HashMap<>();
        Map<Pairs, Integer> due = new HashMap<>();
        List<Reading> doubtful = new ArrayList<>();
        for (int key = 0; key < answers.size(); key++) {
            Reading answer = answers.get(key);
            if (!answer.between().isEmpty()) {
                cost += everyKey && !meant.containsKey(key) && !read.containsKey(key)
                        ? answer.between().count() * Slips.EITHER_WAY
                        : 0;
                doubtful.add(answer);
                continue;
            }
            sure.merge(answer.low(), 1, Integer::sum);
            if (!meant.containsKey(key) && !read.containsKey(key)) {
                due.merge(answer.low(), 1, Integer::sum);
            }
        }
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
