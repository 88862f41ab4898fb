package buzzout.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All observations of a session that still count. A key that chatters for hours is observed in a few ways, however often.
 *
 * @param times how often each was made, in the order in which each was first made
 */
public record Evidence(Map<Observation, Integer> times) {
    public static final Evidence NONE = new Evidence(Map.of());

    public Evidence {
        times = Collections.unmodifiableMap(new LinkedHashMap<>(times));
    }

    public Evidence(List<Observation> observations) {
        this(counted(observations));
    }

    private static Map<Observation, Integer> counted(List<Observation> observations) {
        Map<Observation, Integer> times = new LinkedHashMap<>();
        observations.forEach(observation -> times.merge(observation, 1, Integer::sum));
        return times;
    }

    /** Each as often as it was made, equal ones together. */
    public List<Observation> observations() {
        List<Observation> all = new ArrayList<>();
        times.forEach((observation, often) -> all.addAll(Collections.nCopies(often, observation)));
        return List.copyOf(all);
    }

    /**
     * Whether what is more than the earlier evidence can only speak against what explained that. What was taken back can
     * speak for it, and so can a press that comes although every key was said to have been pressed.
     */
    public boolean continues(Evidence earlier) {
        return equals(earlier) || (!earlier.saysEveryKey() && holdsAllOf(earlier));
    }

    private boolean saysEveryKey() {
        for (Observation each : times.keySet()) {
            if (each.hands() instanceof Observation.Hands.EveryKey) {
                return true;
            }
        }
        return false;
    }

    private boolean holdsAllOf(Evidence earlier) {
        for (Map.Entry<Observation, Integer> before : earlier.times.entrySet()) {
            if (times.getOrDefault(before.getKey(), 0) < before.getValue()) {
                return false;
            }
        }
        return true;
    }
}
