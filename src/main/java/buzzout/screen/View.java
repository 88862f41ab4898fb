package buzzout.screen;

import buzzout.circuit.Concerned;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.Step;
import buzzout.plan.Plan;
import buzzout.session.KeyState;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/**
 * Everything that is drawn, and nothing else is.
 *
 * @param states how each key stands: worked out from the session once, because every key is asked about in every frame
 */
record View(Setting setting, Snapshot snapshot, Focus focus, List<KeyState> states) {
    static View of(Setting setting, Snapshot snapshot, Focus focus) {
        return new View(setting, snapshot, focus, snapshot.session().states());
    }

    Session session() {
        return snapshot.session();
    }

    Plan plan() {
        return snapshot.plan();
    }

    Look look() {
        return setting.look();
    }

    List<Finding> findings() {
        return snapshot.diagnosis().findings();
    }

    boolean isPressing() {
        return session().stage() == Stage.PRESSING;
    }

    /** Whether words about presses are taken: not blindly, while something covers the board, nor between two calls. */
    boolean takesWords() {
        return isPressing()
                && !isCovered()
                && !(isCalling() && session().called().isEmpty());
    }

    /** Whether the help, the bounce times or a close-up lies over the board. */
    boolean isCovered() {
        return focus.help() || focus.bounce() || closeUp().isPresent();
    }

    /** Whether the last press or word can be taken back, or a repair that has not been made. */
    boolean takesBack() {
        return (isPressing() || isRepairing()) && !isCovered();
    }

    boolean isRepairing() {
        return session().stage() == Stage.REPAIRING;
    }

    /** Whether a roll call goes on that has keys left to call. */
    boolean isCalling() {
        return !session().toCall().isEmpty();
    }

    /** Whether a touch with the flying lead would tell something. */
    boolean canTouch() {
        return snapshot.diagnosis().next().stream().anyMatch(next -> next.step() instanceof Step.Touch);
    }

    KeyState state(int key) {
        return states.get(key);
    }

    /** How many keys have this state. */
    int count(KeyState state) {
        return Collections.frequency(states, state);
    }

    /** The key that a keystroke is about: the one called, or whose joint is, or else the one selected. */
    int subject() {
        return session()
                .lead()
                .called()
                .map(joint -> OptionalInt.of(joint.key()))
                .orElse(session().called())
                .orElse(selected());
    }

    int selected() {
        return Math.min(focus.selected(), plan().keys().size() - 1);
    }

    /** The finding that the person chose to read, while it still exists. */
    Optional<Finding> chosen() {
        return focus.finding().isPresent()
                        && focus.finding().getAsInt() < findings().size()
                ? Optional.of(findings().get(focus.finding().getAsInt()))
                : Optional.empty();
    }

    /** The suspect of the chosen finding whose joint is shown large, while there is one. */
    OptionalInt closeUp() {
        int suspects = chosen().map(finding -> finding.suspects().size()).orElse(0);
        return focus.suspect().isPresent() && suspects > 0
                ? OptionalInt.of(Math.min(focus.suspect().getAsInt(), suspects - 1))
                : OptionalInt.empty();
    }

    /** The keys drawn in a frame: called, selected, where the chosen finding may be; else those held or to hold. */
    Set<Integer> framed() {
        Set<Integer> framed = new TreeSet<>();
        if (session().flex().on()) {
            framed.addAll(session().flex().held());
            if (setting.simulated()) {
                framed.add(subject());
            }
        } else if (session().allAtOnce().isOn()) {
            framed.addAll(session().allAtOnce().called());
        } else {
            framed.add(subject());
            framed.add(selected());
            chosen().ifPresent(finding -> finding.suspects()
                    .forEach(suspect -> Concerned.keys(plan(), suspect.fault()).forEach(framed::add)));
        }
        return framed;
    }

    View with(Setting newSetting) {
        return new View(newSetting, snapshot, focus, states);
    }

    View with(Focus newFocus) {
        return new View(setting, snapshot, newFocus, states);
    }

    View with(Snapshot newSnapshot) {
        return of(setting, newSnapshot, focus);
    }
}
