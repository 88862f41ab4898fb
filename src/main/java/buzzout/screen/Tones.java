package buzzout.screen;

import buzzout.report.HeldText;
import buzzout.session.AllAtOnce;
import buzzout.session.KeyState;
import buzzout.session.Press;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which tone a change of the session deserves: at most one, and the one that needs the person most. */
final class Tones {
    private static final List<Tone> MOST_NEEDED_FIRST = List.of(Tone.WRONG, Tone.DONE, Tone.NOTHING, Tone.GOOD);

    private Tones() {}

    static Optional<Tone> between(Session before, Session after) {
        return Stream.of(link(before, after), step(before, after), press(before, after), held(before, after))
                .flatMap(Optional::stream)
                .min(Comparator.comparing(MOST_NEEDED_FIRST::indexOf));
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

    /** Of the presses that are new, and the last one where it turned out to close something else than at first. */
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

    private static Optional<Tone> press(Session before, Session after) {
        List<Press> presses = after.presses();
        int known = Math.min(before.presses().size(), presses.size());
        boolean lastIsOther = known > 0
                && !closed(presses.get(known - 1))
                        .equals(closed(before.presses().get(known - 1)));
        boolean fewer = presses.size() < before.presses().size();
        return presses.subList(lastIsOther && !fewer ? known - 1 : known, presses.size()).stream()
                .map(press -> press(after, press))
                .min(Comparator.comparing(MOST_NEEDED_FIRST::indexOf));
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
