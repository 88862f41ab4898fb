package buzzout.session;

import buzzout.circuit.Pairs;
import buzzout.plan.Plan;
import buzzout.probe.Identity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Everything known after some events: a pure fold, so that the same events give the same session.
 *
 * @param quiet what conducted without a press, once the quiet check is done
 * @param now what conducts at the moment
 * @param states one for each of the plan's keys
 * @param presses in the order made, those taken back left out
 * @param called the key that the program waits for
 * @param linkTrouble why the link is down, while it is
 * @param lostChanges changes that never arrived
 * @param garbledLines lines from the probe that were not understood
 */
public record Session(
        Plan plan,
        Stage stage,
        Optional<Identity> probe,
        Optional<String> port,
        Pairs quiet,
        Pairs now,
        List<KeyState> states,
        List<Press> presses,
        Evidence evidence,
        OptionalInt called,
        Optional<String> linkTrouble,
        long lostChanges,
        long garbledLines) {
    public Session {
        states = List.copyOf(states);
        presses = List.copyOf(presses);
    }

    /** The session before its first event. */
    public static Session of(Plan plan) {
        return new Session(
                plan,
                Stage.NO_PROBE,
                Optional.empty(),
                Optional.empty(),
                Pairs.NONE,
                Pairs.NONE,
                plan.keys().stream().map(key -> KeyState.UNTESTED).toList(),
                List.of(),
                Evidence.NONE,
                OptionalInt.empty(),
                Optional.empty(),
                0,
                0);
    }

    /** How many keys have this state. */
    public long count(KeyState state) {
        return states.stream().filter(state::equals).count();
    }
}
