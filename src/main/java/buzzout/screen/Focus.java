package buzzout.screen;

import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.plan.Side;
import buzzout.session.Session;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the person is looking at.
 *
 * @param selected index of the selected key
 * @param finding index of the finding chosen to read
 * @param scroll how many lines of the findings lie above their pane
 * @param help whether the help covers the board
 * @param bounce whether the bounce times cover it, beneath the help
 * @param suspect index of the suspect of the chosen finding whose joint is shown large, where one is
 */
record Focus(
        Side side, int selected, OptionalInt finding, int scroll, boolean help, boolean bounce, OptionalInt suspect) {
    static final Focus FIRST = new Focus(Side.CAP, 0, OptionalInt.empty(), 0, false);

    /** Less than this many key pitches to the side counts as straight on. */
    private static final double STRAIGHT = 0.9;

    /** On the board. */
    Focus(Side side, int selected, OptionalInt finding, int scroll, boolean help) {
        this(side, selected, finding, scroll, help, false, OptionalInt.empty());
    }

    Focus withBounce(boolean shown) {
        return new Focus(side, selected, finding, scroll, help, shown, suspect);
    }

    Focus closeUp(OptionalInt onSuspect) {
        return new Focus(side, selected, finding, scroll, help, bounce, onSuspect);
    }

    Focus flipped() {
        return new Focus(side.other(), selected, finding, scroll, help, bounce, suspect);
    }

    Focus withHelp(boolean shown) {
        return new Focus(side, selected, finding, scroll, shown, bounce, suspect);
    }

    Focus scrolledTo(int line) {
        return new Focus(side, selected, finding, line, help, bounce, suspect);
    }

    /** On a finding, on the first key to look at for it, with the findings scrolled to a line. */
    Focus choosing(int chosen, int key, int line) {
        return new Focus(
                side,
                key,
                OptionalInt.of(chosen),
                line,
                help,
                bounce,
                suspect.isPresent() ? OptionalInt.of(0) : suspect);
    }

    /** On the joint that is asked for, as it is seen with the lead in hand; or on the key last pressed, if it is new. */
    Focus following(Session before, Session after) {
        Optional<Joint> joint = after.lead().called();
        if (joint.isPresent() && !joint.equals(before.lead().called())) {
            return new Focus(Side.SOLDER, joint.get().key(), finding, scroll, help);
        }
        int presses = after.presses().size();
        if (presses <= before.presses().size()) {
            return this;
        }
        int pressed = after.presses().get(presses - 1).key().orElse(selected);
        return new Focus(side, pressed, finding, scroll, help, bounce, suspect);
    }

    /** On the nearest key in a direction as drawn; stays where there is none. */
    Focus moved(Plan plan, int right, int down) {
        Key from = plan.keys().get(selected);
        int rightOnCaps = side == Side.CAP ? right : -right;
        int to = plan.keys().stream()
                .filter(key -> along(from, key, rightOnCaps, down) > 0.25)
                .filter(key -> down != 0 || across(from, key, down) < STRAIGHT)
                .min(Comparator.comparingDouble(
                        key -> 2 * along(from, key, rightOnCaps, down) + across(from, key, down)))
                .map(Key::index)
                .orElse(selected);
        return new Focus(side, to, OptionalInt.empty(), scroll, help, bounce, OptionalInt.empty());
    }

    private static double along(Key from, Key to, int right, int down) {
        return down == 0
                ? right * (to.place().middle() - from.place().middle())
                : down * (to.place().y() - from.place().y());
    }

    private static double across(Key from, Key to, int down) {
        return Math.abs(
                down == 0
                        ? to.place().y() - from.place().y()
                        : to.place().middle() - from.place().middle());
    }
}
