package buzzout.diagnosis;

import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/**
 * Evidence summed up for weighing: what each part of a forecast costs, as a logarithm of its probability.
 *
 * <p>The likelihood is a sum of three kinds of cost. The quiet check costs {@link Slips#MISREAD} for every pair that the
 * forecast surely has otherwise, and {@link Slips#EITHER_WAY} for every doubtful one. Each press of a known key costs a
 * slip where the key's forecast answer is another; the slips of a read-through are others than those of called keys. In free play, presses and keys are matched by answer: with {@code
 * came} presses that gave an answer and {@code able} keys that would give it, the answer costs {@code came} strays when
 * no key is able, one repeat when more came than keys are able, and, once every key is said to have been pressed, one
 * key left out for each able key without a press, and {@link Slips#EITHER_WAY} for each doubtful pair of a key.
 */
final class Ledger {
    private final Readings readings;
    private final Optional<Pairs> quiet;
    private final int keys;
    private final List<Tally> meant = new ArrayList<>();
    /** The answers at each key's turn in a read-through. */
    private final List<Tally> read = new ArrayList<>();

    private final List<Tally> flexed = new ArrayList<>();
    /** What all of these cost, for each key and trial. */
    private final List<Slipped> slipped = new ArrayList<>();

    private final BitSet named = new BitSet();
    private final Counts came = new Counts();
    private final BitSet cameAtAll = new BitSet();
    private final Set<Integer> fallen = new TreeSet<>();
    private final boolean everyKey;
    private int presses;

    Ledger(Forecasts forecasts, Plan plan, Evidence evidence) {
        this.readings = forecasts.readings();
        keys = plan.keys().size();
        Optional<Pairs> off = Optional.empty();
        Pairs free = Pairs.NONE;
        boolean every = false;
        for (int key = 0; key < keys; key++) {
            meant.add(new Tally());
            read.add(new Tally());
            flexed.add(new Tally());
        }
        forecasts.trials().forEach(trial -> meant.add(new Tally()));
        for (Map.Entry<Observation, Integer> made : evidence.times().entrySet()) {
            Observation observation = made.getKey();
            int often = made.getValue();
            Pairs seen = seen(observation, plan);
            Pairs beyond = seen.minus(free);
            if (observation.hands() instanceof Hands.Off) {
                free = observation.seen();
                off = Optional.of(seen);
            } else if (observation.hands() instanceof Hands.Meant press) {
                add(meant, press.key(), beyond, often);
                presses += often;
                named.set(press.key());
            } else if (observation.hands() instanceof Hands.Read turn) {
                add(read, turn.key(), beyond, often);
                presses += often;
                named.set(turn.key());
            } else if (observation.hands() instanceof Hands.Flexed held) {
                add(flexed, held.key(), beyond, often);
                presses += often;
            } else if (observation.hands() instanceof Hands.SomeKey) {
                int answer = readings.number(beyond);
                presses += often;
                came.add(answer, often);
                cameAtAll.set(answer);
            } else if (observation.hands() instanceof Hands.NetFell fell) {
                fallen.add(fell.net());
            } else if (observation.hands() instanceof Hands.EveryKey) {
                every = true;
            }
            Trial.of(observation.hands()).ifPresent(trial -> add(meant, forecasts.asked(trial), beyond, often));
        }
        quiet = off;
        everyKey = every;
        for (int asked = 0; asked < meant.size(); asked++) {
            Slipped slips = new Slipped();
            if (asked < keys) {
                slips.add(meant.get(asked), Slips.NO_PRESS, Slips.OTHER_ANSWER);
                slips.add(read.get(asked), Slips.SKIPPED, Slips.NEIGHBOUR);
                slips.add(flexed.get(asked), Slips.LET_GO, Slips.LET_GO);
            } else {
                slips.add(meant.get(asked), Slips.TRIAL_SPOILT, Slips.TRIAL_SPOILT);
            }
            slipped.add(slips);
        }
    }

    /** Pairs with the spare pin count in touches only. */
    private static Pairs seen(Observation observation, Plan plan) {
        OptionalInt spare = plan.sparePinIndex();
        return spare.isEmpty() || observation.hands() instanceof Hands.Touch
                ? observation.seen()
                : observation.seen().withoutPin(spare.getAsInt());
    }

    private void add(List<Tally> to, int asked, Pairs beyond, int often) {
        while (to.size() <= asked) {
            to.add(new Tally());
        }
        to.get(asked).add(readings.number(beyond), often);
    }

    /** The nets that met ground for a moment. */
    Set<Integer> fallen() {
        return fallen;
    }

    int keys() {
        return keys;
    }

    Optional<Pairs> quiet() {
        return quiet;
    }

    /** How many presses there were, and looks at held keys. */
    int presses() {
        return presses;
    }

    /** The answers of this key where it was meant or had its turn, or of this trial, each once. */
    List<Integer> meant(int asked) {
        if (asked >= keys || read.get(asked).isEmpty()) {
            return meant.get(asked).answers();
        }
        Set<Integer> both = new LinkedHashSet<>(meant.get(asked).answers());
        both.addAll(read.get(asked).answers());
        return List.copyOf(both);
    }

    /** Whether any key had its turn in a read-through. */
    boolean hasReadThrough() {
        for (Tally tally : read) {
            if (!tally.isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** Whether all that is known of this key's answer is what came at its turn in a read-through. */
    boolean isOnlyRead(int key) {
        return !read.get(key).isEmpty() && meant.get(key).isEmpty();
    }

    /** The answers of this key, held while the plate was flexed, each once. */
    List<Integer> flexed(int key) {
        return flexed.get(key).answers();
    }

    /** How often this key, held while the plate was flexed, dropped out. */
    int dropouts(int key) {
        return flexed.get(key).timesOf(Readings.NOTHING);
    }

    boolean isNamed(int key) {
        return named.get(key);
    }

    /** The answers that came in free play. */
    BitSet came() {
        return cameAtAll;
    }

    /** Whether the costs of answers depend on which keys are able to give them. */
    boolean matchesAnswers() {
        return everyKey || !cameAtAll.isEmpty();
    }

    /** The part of {@link #quietCost} that is no slip: levels that may read either way. */
    double quietDoubt(int forecast) {
        return quiet.isEmpty() ? 0 : doubt(forecast);
    }

    double quietCost(int forecast) {
        if (quiet.isEmpty()) {
            return 0;
        }
        Reading reading = readings.reading(forecast);
        Pairs possible = reading.low().plus(reading.between());
        int wrong = quiet.get().minus(possible).count()
                + reading.low().minus(quiet.get()).count();
        return wrong * Slips.MISREAD + doubt(forecast);
    }

    private double doubt(int forecast) {
        return readings.reading(forecast).between().count() * Slips.EITHER_WAY;
    }

    /** What the presses of a key, or the outcomes of a trial, cost where this is forecast. */
    double askedCost(int asked, int forecast) {
        return readings.isVague(forecast)
                ? vagueCost(asked, forecast, 1)
                : slipped.get(asked).cost(forecast);
    }

    /** The part of {@link #askedCost} that is no slip: answers that a doubtful forecast agrees with. */
    double askedDoubt(int asked, int forecast) {
        return readings.isVague(forecast) ? vagueCost(asked, forecast, 0) : 0;
    }

    private double vagueCost(int asked, int forecast, int slips) {
        boolean leftToBePressed = everyKey && asked < keys && !isNamed(asked);
        return slipped.get(asked).cost(forecast, readings, slips) + (leftToBePressed ? doubt(forecast) : 0);
    }

    /** What an answer costs that {@code able} keys would give, {@code due} of them never named. */
    double answerCost(int answer, int able, int due) {
        int presses = came.of(answer);
        double cost = 0;
        if (presses > 0 && able == 0) {
            cost = presses * Slips.STRAY;
        } else if (presses > able) {
            cost = Slips.REPEAT;
        }
        if (everyKey && answer != Readings.NOTHING && due > presses) {
            cost += (due - presses) * Slips.LEFT_OUT;
        }
        return cost;
    }
}
