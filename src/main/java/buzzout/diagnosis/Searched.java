package buzzout.diagnosis;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What searches under the evidence at hand came to: several ways of looking often come to the same question. */
final class Searched {
    private final Map<Question, Found> known = new HashMap<>();

    /** What explains the focus, beside the faults of the base. */
    record Question(SetOfFaults base, Set<Term> focus, boolean lastingOnly, int mostExpanded) {}

    /**
     * What a search found.
     *
     * @param best explains best
     * @param fewest explains all that is in focus with fewest faults
     */
    record Found(Hypothesis best, Hypothesis fewest) {}

    Optional<Found> known(Question question) {
        return Optional.ofNullable(known.get(question));
    }

    void remember(Question question, Found found) {
        known.put(question, found);
    }
}
