package buzzout.screen;

import buzzout.report.HeldText;
import buzzout.session.AllAtOnce;
import buzzout.session.KeyState;
import buzzout.session.Press;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which tone a change of the session deserves: at most one, and the one that needs the person most. */
final class Tones {
    private static final List<Tone> MOST_NEEDED_FIRST = List.of(Tone.WRONG, Tone.DONE, Tone.NOTHING, Tone.GOOD);

    private Tones() {}

    static Optional<Tone> between(Session before, Session after) {
        Set<Tone> deserved = EnumSet.noneOf(Tone.class);
        link(before, after).ifPresent(deserved::add);
        step(before, after).ifPresent(deserved::add);
        held(before, after).ifPresent(deserved::add);
        for (Press press : anew(before.presses(), after.presses())) {
            deserved.add(press(after, press));
        }
        for (Tone tone : MOST_NEEDED_FIRST) {
            if (deserved.contains(tone)) {
                return Optional.of(tone);
            }
        }
        return Optional.empty();
    }

    private static Optional<Tone> link(Session before, Session after) {
        return before.linkTrouble().isEmpty() && after.linkTrouble().isPresent()
                ? Optional.of(Tone.WRONG)
                : Optional.empty();
    }

    private static Optional<Tone> step(Session before, Session after) {
        boolean handsOn = before.stage() != Stage.PRESSING && after.stage() == Stage.PRESSING;
        boolean lastKey = after.stage() == Stage.PRESSING && untested(before) > 0 && untested(after) == 0;
        return handsOn || lastKey ? Optional.of(Tone.DONE) : Optional.empty();
    }

    private static long untested(Session session) {
        return session.count(KeyState.UNTESTED);
    }

    private static Optional<Tone> held(Session before, Session after) {
        if (after.flex().dropouts().size() > before.flex().dropouts().size()) {
            return Optional.of(Tone.WRONG);
        }
        if (HeldLines.of(before, after).isEmpty()) {
            return Optional.empty();
        }
        List<AllAtOnce.Tried> tried = after.allAtOnce().tried();
        boolean well = tried.size() > before.allAtOnce().tried().size()
                && HeldText.isAsComputed(after, tried.get(tried.size() - 1));
        return Optional.of(well ? after.allAtOnce().isOn() ? Tone.GOOD : Tone.DONE : Tone.WRONG);
    }

    /** The presses that are new, and the last one where it turned out to close something else than at first. */
    private static List<Press> anew(List<Press> before, List<Press> after) {
        int known = Math.min(before.size(), after.size());
        boolean lastIsOther = known > 0 && !closed(after.get(known - 1)).equals(closed(before.get(known - 1)));
        boolean fewer = after.size() < before.size();
        return after.subList(lastIsOther && !fewer ? known - 1 : known, after.size());
    }

    private static Object closed(Press press) {
        return List.of(press.pairs(), press.micros());
    }

    private static Tone press(Session session, Press press) {
        if (press.pairs().isEmpty()) {
            return Tone.NOTHING;
        }
        return press.isAsPlanned(session.plan()) ? Tone.GOOD : Tone.WRONG;
    }
}
