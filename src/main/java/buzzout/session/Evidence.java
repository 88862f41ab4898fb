package buzzout.session;

import java.util.List;

/** All observations of a session that still count, in the order in which they were made. */
public record Evidence(List<Observation> observations) {
    public static final Evidence NONE = new Evidence(List.of());

    public Evidence {
        observations = List.copyOf(observations);
    }

    /** Whether nothing of the earlier evidence was taken back or has changed since. */
    public boolean continues(Evidence earlier) {
        int known = earlier.observations.size();
        return observations.size() >= known && observations.subList(0, known).equals(earlier.observations);
    }
}
