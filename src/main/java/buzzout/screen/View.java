package buzzout.screen;

import buzzout.diagnosis.Finding;
import buzzout.plan.Plan;
import buzzout.session.KeyState;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

    /** Whether words about presses are taken: not blindly, while the help covers the board, nor between two calls. */
    boolean takesWords() {
        return isPressing()
                && !focus.help()
                && !focus.bounce()
                && !(isCalling() && session().called().isEmpty());
    }

    /** Whether the last press or word can be taken back, or a repair that has not been made. */
    boolean takesBack() {
        return (isPressing() || isRepairing()) && !focus.help() && !focus.bounce();
    }

    boolean isRepairing() {
        return session().stage() == Stage.REPAIRING;
    }

    /** Whether a roll call goes on that has keys left to call. */
    boolean isCalling() {
        return !session().toCall().isEmpty();
    }

    KeyState state(int key) {
        return states.get(key);
    }

    /** How many keys have this state. */
    long count(KeyState state) {
        return states.stream().filter(state::equals).count();
    }

    /** The key that a keystroke is about: the one called, or else the one selected. */
    int subject() {
        return session().called().orElse(selected());
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

    /** The keys drawn in a frame: called, selected, where the chosen finding may be; else those held or to hold. */
    Set<Integer> framed() {
        Stream<Integer> concerned = chosen().stream()
                .flatMap(finding -> finding.suspects().stream())
                .flatMap(suspect -> Concerned.keys(plan(), suspect.fault()));
        if (session().flex().on()) {
            Stream<Integer> toMove = setting.simulated() ? Stream.of(subject()) : Stream.empty();
            return Stream.concat(toMove, session().flex().held().stream()).collect(Collectors.toSet());
        } else if (session().allAtOnce().isOn()) {
            return new TreeSet<>(session().allAtOnce().called());
        }
        return Stream.concat(Stream.of(subject(), selected()), concerned).collect(Collectors.toSet());
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
