package buzzout.screen;

import buzzout.circuit.Bridge;
import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.KeyOpen;
import buzzout.circuit.LinkOpen;
import buzzout.circuit.Pairs;
import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.Suspect;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import buzzout.plan.SolderSide;
import buzzout.probe.Identity;
import buzzout.session.Action;
import buzzout.session.Evidence;
import buzzout.session.KeyState;
import buzzout.session.Press;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Views of a Quayside 46 in mid-session: C6 and C7 are bridged, V is silent, and the last keys are still untested. */
final class Views {
    static final Plan QUAYSIDE = ExamplePlan.quayside();
    static final Look FULL = new Look(true, false);
    static final Look ASCII = new Look(false, true);

    private static final long MILLIS_A_PRESS = 1_400;
    private static final Key LAST_PRESSED = key(".");
    private static final Key SILENT = key("V");
    private static final Circuit SOLDERED = Circuit.of(QUAYSIDE, List.of(bridge(), new KeyOpen(SILENT.index())));

    private Views() {}

    static View midSession(Look look) {
        View view =
                view(QUAYSIDE, look, new Snapshot(session(Stage.PRESSING), diagnosis(), events(), Optional.empty()));
        Focus focus = Focus.FIRST;
        return view.with(new Focus(
                focus.side(), LAST_PRESSED.index(), focus.finding(), focus.scroll(), focus.help(), focus.tones()));
    }

    static View view(Plan plan, Look look, Snapshot snapshot) {
        Setting setting =
                new Setting(Optional.of("Q-03"), Optional.of("sessions/Q-03-20261125-0942.jsonl"), look, true);
        return new View(setting, snapshot, Focus.FIRST);
    }

    static Session session(Stage stage) {
        boolean found = stage != Stage.NO_PROBE;
        return new Session(
                QUAYSIDE,
                stage,
                found ? Optional.of(new Identity(1, "0.1.0", "ATmega32U4", 26, 16_000_000)) : Optional.empty(),
                found ? Optional.of("/dev/ttyACM0") : Optional.empty(),
                Pairs.NONE,
                Pairs.NONE,
                stage == Stage.PRESSING ? states() : Session.of(QUAYSIDE).states(),
                List.of(),
                Evidence.NONE,
                OptionalInt.empty(),
                Optional.empty(),
                0,
                0);
    }

    private static List<KeyState> states() {
        return QUAYSIDE.keys().stream().map(Views::state).toList();
    }

    private static KeyState state(Key key) {
        if (key.index() > LAST_PRESSED.index()) {
            return KeyState.UNTESTED;
        } else if (pairs(key.index()).isEmpty()) {
            return KeyState.SILENT;
        }
        return pairs(key.index()).count() == 1 ? KeyState.GOOD : KeyState.DOUBLED;
    }

    static Fault bridge() {
        return new Bridge(key("G").column(), key("G").index(), key("H").column(), key("H").index());
    }

    static Diagnosis diagnosis() {
        Net column = QUAYSIDE.column(SILENT);
        Finding bridged = new Finding(
                List.of(new Suspect(bridge(), 0.99)),
                0.99,
                List.of("C6 and C7 conduct both ways with no key pressed"),
                Optional.empty());
        Finding silent = new Finding(
                List.of(
                        new Suspect(new KeyOpen(SILENT.index()), 0.56),
                        new Suspect(new LinkOpen(QUAYSIDE.indexOf(column), 1, false), 0.41)),
                0.97,
                List.of("V was pressed and nothing came"),
                Optional.of("touch C5 at V, the " + SolderSide.joint(QUAYSIDE, column, 2)
                        + " (solder side), with the flying lead."));
        return new Diagnosis(List.of(bridged, silent), 0.02, List.of());
    }

    static EventLines events() {
        List<EventLines.Line> told = new ArrayList<>();
        for (int index = key("X").index(); index <= LAST_PRESSED.index(); index++) {
            Press press = new Press(0, pairs(index), OptionalInt.of(index), OptionalInt.empty(), false);
            String text = index == SILENT.index()
                    ? EventWords.of(QUAYSIDE, new Action.NothingCame(index)).orElseThrow()
                    : PressWords.of(QUAYSIDE, press);
            told.add(new EventLines.Line(index * MILLIS_A_PRESS, text, true));
        }
        return new EventLines(told);
    }

    /** What a key closes on this board. */
    static Pairs pairs(int index) {
        return SOLDERED.pressed(QUAYSIDE.keys().get(index))
                .low()
                .minus(SOLDERED.quiet().low());
    }

    private static Key key(String name) {
        return QUAYSIDE.key(name).orElseThrow();
    }

    static Session with(Session session, List<KeyState> states, List<Press> presses) {
        return new Session(
                session.plan(),
                session.stage(),
                session.probe(),
                session.port(),
                session.quiet(),
                session.now(),
                states,
                presses,
                session.evidence(),
                session.called(),
                session.linkTrouble(),
                session.lostChanges(),
                session.garbledLines());
    }
}
