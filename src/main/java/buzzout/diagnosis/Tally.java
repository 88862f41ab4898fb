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
 * Evidence summed up for weighing. Answers are the pairs beyond the quiet check.
 *
 * @param quiet what conducted without a press
 * @param meant presses of known keys
 * @param free how often each answer came from presses of the person's own choice
 * @param everyKey whether every key is said to have been pressed
 */
record Tally(Optional<Pairs> quiet, List<Meant> meant, Map<Pairs, Integer> free, boolean everyKey) {
    /** A press of a known key and its answer. */
    record Meant(int key, Pairs answer) {}

    static Tally of(Evidence evidence) {
        Pairs quiet = null;
        List<Meant> meant = new ArrayList<>();
        Map<Pairs, Integer> free = new LinkedHashMap<>();
        boolean everyKey = false;
        for (Observation observation : evidence.observations()) {
            Pairs answer =
                    quiet == null ? observation.seen() : observation.seen().minus(quiet);
            if (observation.hands() instanceof Hands.Off) {
                quiet = observation.seen();
            } else if (observation.hands() instanceof Hands.Meant named) {
                meant.add(new Meant(named.key(), answer));
            } else if (observation.hands() instanceof Hands.SomeKey) {
                free.merge(answer, 1, Integer::sum);
            } else if (observation.hands() instanceof Hands.EveryKey) {
                everyKey = true;
            }
        }
        return new Tally(Optional.ofNullable(quiet), List.copyOf(meant), free, everyKey);
    }
}
