package buzzout.diagnosis;

import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.plan.Joint;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * Evidence summed up for weighing: what each part of a forecast costs, as a logarithm of its probability.
 *
 * <p>The likelihood is a sum of three kinds of cost. The quiet check costs {@link Slips#MISREAD} for every pair that the
 * forecast surely has otherwise, and {@link Slips#EITHER_WAY} for every doubtful one. Each press of a known key costs a
 * slip where the key's forecast answer is another, and so does each touch of a joint. In free play, presses and keys are matched by answer: with {@code
 * came} presses that gave an answer and {@code able} keys that would give it, the answer costs {@code came} strays when
 * no key is able, one repeat when more came than keys are able, and, once every key is said to have been pressed, one
 * key left out for each able key without a press.
 */
final class Ledger {
    private final Readings readings;
    private final Optional<Pairs> quiet;
    private final List<List<Integer>> meant = new ArrayList<>();
    private final List<Joint> joints = new ArrayList<>();
    private final List<List<Integer>> touched = new ArrayList<>();
    private final BitSet named = new BitSet();
    private final Counts came = new Counts();
    private final BitSet cameAtAll = new BitSet();
    private final boolean everyKey;

    Ledger(Readings readings, int keys, Evidence evidence) {
        this.readings = readings;
        Optional<Pairs> off = Optional.empty();
        boolean every = false;
        for (int key = 0; key < keys; key++) {
            meant.add(List.of());
        }
        for (Observation observation : evidence.observations()) {
            Pairs beyond = observation.seen().minus(off.orElse(Pairs.NONE));
            if (observation.hands() instanceof Hands.Off) {
                off = Optional.of(observation.seen());
            } else if (observation.hands() instanceof Hands.Meant press) {
                List<Integer> answers = new ArrayList<>(meant.get(press.key()));
                answers.add(readings.number(beyond));
                meant.set(press.key(), answers);
                named.set(press.key());
            } else if (observation.hands() instanceof Hands.SomeKey) {
                int answer = readings.number(beyond);
                came.add(answer, 1);
                cameAtAll.set(answer);
            } else if (observation.hands() instanceof Hands.Touch touch) {
                touched.get(place(touch.joint())).add(readings.number(beyond));
            } else if (observation.hands() instanceof Hands.EveryKey) {
                every = true;
            }
        }
        quiet = off;
        everyKey = every;
    }

    private int place(Joint joint) {
        if (!joints.contains(joint)) {
            joints.add(joint);
            touched.add(new ArrayList<>());
        }
        return joints.indexOf(joint);
    }

    /** The joints that were touched, each once. */
    List<Joint> joints() {
        return joints;
    }

    /** What touches of this joint, by its place in {@link #joints()}, added to the quiet sweep. */
    List<Integer> touched(int joint) {
        return touched.get(joint);
    }

    Optional<Pairs> quiet() {
        return quiet;
    }

    /** The answers of this key where it was meant. */
    List<Integer> meant(int key) {
        return meant.get(key);
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

    double quietCost(int forecast) {
        if (quiet.isEmpty()) {
            return 0;
        }
        Reading reading = readings.reading(forecast);
        Pairs possible = reading.low().plus(reading.between());
        int wrong = quiet.get().minus(possible).count()
                + reading.low().minus(quiet.get()).count();
        return wrong * Slips.MISREAD + reading.between().count() * Slips.EITHER_WAY;
    }

    double keyCost(int key, int forecast) {
        double cost = 0;
        for (int answer : meant.get(key)) {
            cost += meantCost(forecast, answer);
        }
        return cost;
    }

    private double meantCost(int forecast, int answer) {
        return cost(forecast, answer, Slips.NO_PRESS, Slips.OTHER_ANSWER);
    }

    /** What the touches of a joint cost, by its place in {@link #joints()}. */
    double touchCost(int joint, int forecast) {
        double cost = 0;
        for (int answer : touched.get(joint)) {
            cost += cost(forecast, answer, Slips.NO_CONTACT, Slips.OTHER_JOINT);
        }
        return cost;
    }

    private double cost(int forecast, int answer, double nothing, double another) {
        if (forecast == answer) {
            return 0;
        }
        double chance = readings.isVague(forecast) ? readings.chance(forecast, answer) : 0;
        return chance > 0 ? Math.log(chance) : answer == Readings.NOTHING ? nothing : another;
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
