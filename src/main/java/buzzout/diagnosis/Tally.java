package buzzout.diagnosis;

import buzzout.circuit.Pairs;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Evidence summed up for weighing. Answers are what a press adds to the quiet check, as numbers of readings.
 *
 * @param quiet what conducted without a press
 * @param meant presses of known keys
 * @param free how often each answer came from presses of the person's own choice
 * @param everyKey whether every key is said to have been pressed
 */
record Tally(Optional<Pairs> quiet, List<Meant> meant, Map<Integer, Integer> free, boolean everyKey) {
    static final Tally NOTHING = new Tally(Optional.empty(), List.of(), Map.of(), false);

    /** A press of a known key and its answer. */
    record Meant(int key, int answer) {}

    static Tally of(Readings readings, Evidence evidence) {
        Optional<Pairs> quiet = Optional.empty();
        List<Meant> meant = new ArrayList<>();
        Map<Integer, Integer> free = new LinkedHashMap<>();
        boolean everyKey = false;
        for (Observation observation : evidence.observations()) {
            int answer = readings.number(observation.seen().minus(quiet.orElse(Pairs.NONE)));
            if (observation.hands() instanceof Hands.Off) {
                quiet = Optional.of(observation.seen());
            } else if (observation.hands() instanceof Hands.Meant named) {
                meant.add(new Meant(named.key(), answer));
            } else if (observation.hands() instanceof Hands.SomeKey) {
                free.merge(answer, 1, Integer::sum);
            } else if (observation.hands() instanceof Hands.EveryKey) {
                everyKey = true;
            }
        }
        return new Tally(quiet, List.copyOf(meant), free, everyKey);
    }
}
