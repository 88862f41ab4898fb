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
import buzzout.plan.Plan;
import buzzout.probe.Identity;
import buzzout.session.Evidence;
import buzzout.session.KeyState;
import buzzout.session.Press;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Views of a Quayside 46 in mid-session: 31 keys good, one row broken, two columns bridged, the rest untested. */
final class Views {
    static final Plan QUAYSIDE = ExamplePlan.quayside();
    static final Look FULL = new Look(true, false);
    static final Look ASCII = new Look(false, true);

    private static final long MICROS_A_PRESS = 1_400_000;

    private Views() {}

    static View midSession(Look look) {
        return view(QUAYSIDE, look, new Snapshot(session(Stage.PRESSING), diagnosis(), events()));
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
        List<KeyState> states = new ArrayList<>();
        for (Key key : QUAYSIDE.keys()) {
            int index = key.index();
            states.add(
                    index == 4
                            ? KeyState.SILENT
                            : index == 17 || index == 18
                                    ? KeyState.DOUBLED
                                    : index < 34 ? KeyState.GOOD : KeyState.UNTESTED);
        }
        return states;
    }

    static Fault openLink() {
        return new LinkOpen(0, 3, false);
    }

    static Fault bridge() {
        Key key = QUAYSIDE.keys().get(17);
        Key beside = QUAYSIDE.keys().get(18);
        return new Bridge(key.column(), key.index(), beside.column(), beside.index());
    }

    static Diagnosis diagnosis() {
        Finding bridged = new Finding(
                List.of(new Suspect(bridge(), 0.97)),
                0.97,
                List.of("both keys close each other's column as well as their own"),
                Optional.empty());
        Finding silent = new Finding(
                List.of(new Suspect(new KeyOpen(4), 0.52), new Suspect(openLink(), 0.36)),
                0.88,
                List.of("its press was called and nothing came"),
                Optional.of("hold the flying lead against the third joint from the left of R1"));
        return new Diagnosis(List.of(bridged, silent), 0.02, List.of());
    }

    static EventLines events() {
        List<EventLines.Line> told = new ArrayList<>();
        for (int index : new int[] {15, 16, 17, 18, 19, 33}) {
            long micros = index * MICROS_A_PRESS;
            Press press = new Press(micros, pairs(index), OptionalInt.of(index), OptionalInt.empty(), false);
            told.add(new EventLines.Line(micros / 1000, PressWords.of(QUAYSIDE, press), true));
        }
        return new EventLines(told);
    }

    /** What a key closes on the board with the bridge. */
    static Pairs pairs(int index) {
        Circuit circuit = Circuit.of(QUAYSIDE, List.of(bridge()));
        return circuit.pressed(QUAYSIDE.keys().get(index))
                .low()
                .minus(circuit.quiet().low());
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
