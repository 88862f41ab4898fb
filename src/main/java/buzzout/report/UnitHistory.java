package buzzout.report;

import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.KeyState;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * All sessions of one unit.
 *
 * @param unit its mark
 * @param sessions at least one, oldest first
 */
public record UnitHistory(String unit, List<WeighedLog> sessions) {
    /** Where a unit stands after all its sessions. */
    public enum Standing {
        PASSED_AT_FIRST_TRY("passed at first try"),
        PASSED("passed"),
        OPEN("open");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public UnitHistory {
        sessions = sessions.stream().sorted(WeighedLog.BY_TIME).toList();
    }

    WeighedLog last() {
        return sessions.get(sessions.size() - 1);
    }

    Plan plan() {
        return last().outcome().plan();
    }

    /**
     * Passed when the last session has no finding and every key was good when it was last pressed, in whichever session
     * that was: a retest need press only what a repair can have changed.
     */
    public Standing standing() {
        if (sessions.get(0).outcome().verdict() == Verdict.GOOD
                && last().outcome().verdict() == Verdict.GOOD) {
            return Standing.PASSED_AT_FIRST_TRY;
        }
        boolean well = last().outcome().diagnosis().findings().isEmpty()
                && keys(KeyState.GOOD).size() == plan().keys().size();
        return well ? Standing.PASSED : Standing.OPEN;
    }

    /** The names of the keys that stand so after all sessions, in reading order. */
    List<String> keys(KeyState state) {
        Map<String, KeyState> latest = latest();
        return plan().keys().stream()
                .map(Key::name)
                .filter(name -> latest.get(name) == state)
                .toList();
    }

    /** The names of the keys that were tested and are not good. */
    List<String> notGood() {
        Map<String, KeyState> latest = latest();
        return plan().keys().stream()
                .map(Key::name)
                .filter(name -> latest.get(name) != KeyState.GOOD && latest.get(name) != KeyState.UNTESTED)
                .toList();
    }

    /** The state of each key of the last session's plan when it was last pressed. */
    private Map<String, KeyState> latest() {
        Map<String, KeyState> latest = new HashMap<>();
        plan().keys().forEach(key -> latest.put(key.name(), KeyState.UNTESTED));
        for (WeighedLog session : sessions) {
            List<KeyState> states = session.outcome().session().states();
            for (Key key : session.outcome().plan().keys()) {
                if (states.get(key.index()) != KeyState.UNTESTED) {
                    latest.put(key.name(), states.get(key.index()));
                }
            }
        }
        return latest;
    }

    /** Whether every key was pressed in one session or another, so that no fault can have gone unseen for that. */
    boolean isTestedWhole() {
        return keys(KeyState.UNTESTED).isEmpty();
    }

    /** Every fault that was found, in the order in which they were. */
    public List<FaultFound> faults() {
        return FaultTrail.of(sessions);
    }
}
