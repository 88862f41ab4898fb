package buzzout.diagnosis;

import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation.Hands;
import java.util.Optional;

/**
 * Weighs sessions one after another, each to the same findings as an {@link Engine} of its own, and works out only once
 * what boards of one plan with these faults or those would answer. Not safe for use by several threads.
 */
public final class Engines {
    /** Some ten megabytes, beside what forecasts take. */
    private static final int MOST_READINGS = 50_000;

    private Optional<Forecasts> known = Optional.empty();

    /** What is wrong with a board of this plan, after this evidence. */
    public Diagnosis weigh(Plan plan, Evidence evidence) {
        if (!isOfNamedKeys(evidence)) {
            return new Engine(plan).weigh(evidence);
        }
        Forecasts forecasts = known.filter(each -> each.charges().plan().equals(plan))
                .filter(each -> each.readings().count() < MOST_READINGS)
                .orElseGet(() -> new Forecasts(plan, Priors.of(plan)));
        known = Optional.of(forecasts);
        return new Engine(forecasts).weigh(evidence);
    }

    /**
     * Whether neither the numbers of readings, which depend on what was weighed before, can decide between equals, as
     * where answers of keys that nobody named are counted; nor more is asked of boards than their keys.
     */
    private static boolean isOfNamedKeys(Evidence evidence) {
        for (var observation : evidence.times().keySet()) {
            Hands hands = observation.hands();
            if (hands instanceof Hands.SomeKey
                    || hands instanceof Hands.EveryKey
                    || Trial.of(hands).isPresent()) {
                return false;
            }
        }
        return true;
    }
}
