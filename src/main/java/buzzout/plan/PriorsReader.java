package buzzout.plan;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Reads how probable the person holds each kind of fault to be, where the plan says so. */
final class PriorsReader {
    /** The words that begin fault codes. Faults themselves are the circuit's business. */
    static final String[] FAULT_WORDS = {
        "mirrored",
        "turned",
        "open",
        "jumper-off",
        "lead-off",
        "swapped",
        "far-swapped",
        "dead",
        "reversed",
        "bypassed",
        "held",
        "wrong-net",
        "bridge",
        "crossing",
        "pin-low",
        "pin-dragged",
        "loose"
    };

    /** A board on which every other joint is bad is not worth a diagnosis. */
    private static final double MOST = 0.5;

    private PriorsReader() {}

    /** Fault word to the probability of one named fault of that kind. */
    static Map<String, Double> read(Optional<Settings> table, Problems problems) {
        Map<String, Double> priors = new TreeMap<>();
        table.map(settings -> settings.known(FAULT_WORDS)).ifPresent(settings -> {
            for (String word : FAULT_WORDS) {
                OptionalDouble prior = settings.number(word);
                if (prior.isPresent() && !(prior.getAsDouble() > 0 && prior.getAsDouble() <= MOST)) {
                    problems.error(
                            settings.at(word),
                            "[priors] " + word + " must be more than 0 and at most 0.5: the probability of one named"
                                    + " fault of this kind");
                } else if (prior.isPresent()) {
                    priors.put(word, prior.getAsDouble());
                }
            }
        });
        return priors;
    }
}
