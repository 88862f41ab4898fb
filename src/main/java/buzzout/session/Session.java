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
 * @param quiet what conducts without a press, once the quiet check is done
 * @param now what conducts at the moment
 * @param presses in the order made, those taken back left out
 * @param everyKeyPressed whether the person said so
 * @param called the key that the program waits for
 * @param lead the flying lead and its touches; pairs with it are in none of the others
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
        List<Press> presses,
        boolean everyKeyPressed,
        OptionalInt called,
        Lead lead,
        Optional<String> linkTrouble,
        long lostChanges,
        long garbledLines) {
    public Session {
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
                List.of(),
                false,
                OptionalInt.empty(),
                Lead.UNUSED,
                Optional.empty(),
                0,
                0);
    }

    /** The session after one more event. */
    public Session after(Event event) {
        return Fold.after(this, event);
    }

    /** How each of the plan's keys stands. */
    public List<KeyState> states() {
        return Coverage.of(this);
    }

    /** What a diagnosis may weigh. */
    public Evidence evidence() {
        return Gathered.from(this);
    }

    /** How many keys have this state. */
    public long count(KeyState state) {
        return states().stream().filter(state::equals).count();
    }
}
