package buzzout.diagnosis;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What would settle each finding, worked out again only where the explanations in question have changed. */
final class Settling {
    private static final int MOST_KNOWN = 64;

    /** The explanations in question: what they have in common, and each with its weight to nine places. */
    private record Question(BitSet base, List<BitSet> charged, List<Long> weights) {
        static Question of(Strand strand) {
            List<Hypothesis> states = Settle.states(strand);
            double best = states.get(0).score();
            List<BitSet> charged = new ArrayList<>();
            List<Long> weights = new ArrayList<>();
            for (Hypothesis state : states) {
                charged.add(state.charged());
                weights.add(Math.round(1e9 * Math.exp(state.score() - best)));
            }
            return new Question(strand.base().charged(), charged, weights);
        }
    }

    private final Map<Question, Settle> known = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Question, Settle> eldest) {
            return size() > MOST_KNOWN;
        }
    };

    private List<Settle> rankedLast = List.of();
    private List<NextStep> ranking = List.of();
    private boolean owed;

    /** Whether an answer was left out since the last start because working it out would take a hand's time. */
    boolean isOwed() {
        return owed;
    }

    void start() {
        owed = false;
    }

    /** Nothing where a finding with these suspects is sure, or where there is no time for an answer that is not known. */
    Optional<Settle> of(Case board, Strand strand, List<Suspect> suspects, boolean hasTime) {
        if (Settle.isSure(suspects)) {
            return Optional.empty();
        }
        Question question = Question.of(strand);
        if (hasTime) {
            return Optional.of(known.computeIfAbsent(question, any -> new Settle(board, strand)));
        }
        Optional<Settle> settle = Optional.ofNullable(known.get(question));
        owed |= settle.isEmpty();
        return settle;
    }

    List<NextStep> ranked(List<Settle> unsettled) {
        if (!unsettled.equals(rankedLast)) {
            rankedLast = unsettled;
            ranking = NextSteps.ranked(unsettled);
        }
        return ranking;
    }
}
