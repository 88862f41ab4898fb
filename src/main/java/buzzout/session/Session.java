package buzzout.session;

import buzzout.circuit.Fault;
import buzzout.circuit.Pairs;
import buzzout.plan.Plan;
import buzzout.probe.Identity;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Everything known after some events: a pure fold, so that the same events give the same session.
 *
 * @param quiet what conducts without a press, once the quiet check is done
 * @param now what conducts at the moment
 * @param presses in the order made, those taken back left out
 * @param everyKeyPressed whether the person said so
 * @param called the key that the program waits for; a press that begins is its answer
 * @param readThrough the read-through that is running, or that is over and can still be taken back
 * @param lead the flying lead and its touches; pairs with it are in none of the others
 * @param rollCall the roll call that goes on, or whose last key has been called
 * @param repairs what is being repaired, until the board is plugged in again
 * @param slip a press that was taken back while its key was down; what it still closes counts for nothing
 * @param flex what dropped out while the plate was flexed
 * @param allAtOnce what combinations of keys answered
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
        Optional<ReadThrough> readThrough,
        Lead lead,
        Optional<RollCall> rollCall,
        List<Fault> repairs,
        Optional<Press> slip,
        FlexCheck flex,
        AllAtOnce allAtOnce,
        Optional<String> linkTrouble,
        long lostChanges,
        long garbledLines) {
    public Session {
        presses = Growing.of(presses);
        repairs = List.copyOf(repairs);
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
                Optional.empty(),
                Lead.UNUSED,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                FlexCheck.NONE,
                AllAtOnce.NONE,
                Optional.empty(),
                0,
                0);
    }

    /** The session after one more event. */
    public Session after(Event event) {
        return Fold.after(this, event);
    }

    /** Whether presses belong to a read-through. */
    public boolean isReading() {
        return readThrough.filter(ReadThrough::isRunning).isPresent();
    }

    /** How each of the plan's keys stands. */
    public List<KeyState> states() {
        return Coverage.of(this);
    }

    /** What a diagnosis may weigh. */
    public Evidence evidence() {
        return Gathered.from(this);
    }

    /** The keys that the roll call has still to call; the one that is called now is among them. */
    public SortedSet<Integer> toCall() {
        return rollCall.map(call -> call.left(presses)).orElseGet(TreeSet::new);
    }

    /** Whether a key is down, as far as the probe can tell. */
    public boolean isKeyDown() {
        return !now.minus(quiet).isEmpty();
    }

    /** How long the contacts bounced. */
    public Bounces bounces() {
        return Bounces.of(this);
    }

    /** How many keys have this state. */
    public int count(KeyState state) {
        return Collections.frequency(states(), state);
    }
}
