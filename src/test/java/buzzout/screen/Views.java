package buzzout.screen;

import buzzout.circuit.Bridge;
import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.KeyOpen;
import buzzout.circuit.LinkOpen;
import buzzout.circuit.Pair;
import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.Suspect;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import buzzout.plan.SolderSide;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Views of a Quayside 46 in mid-session: C6 and C7 are bridged, V is silent, and the last keys are still untested. */
final class Views {
    static final Plan QUAYSIDE = ExamplePlan.quayside();
    static final Look FULL = new Look(true, false);
    static final Look ASCII = new Look(false, true);

    private static final Key LAST_PRESSED = key(".");
    private static final Key SILENT = key("V");

    private Views() {}

    static View midSession(Look look) {
        Sitting sitting = sitting().found().quietCheckDone();
        for (int key = 0; key <= LAST_PRESSED.index(); key++) {
            sitting.press(key);
        }
        return on(LAST_PRESSED.index(), view(look, sitting.snapshot(diagnosis())));
    }

    /** With a key selected. */
    static View on(int key, View view) {
        Focus focus = view.focus();
        return view.with(new Focus(focus.side(), key, OptionalInt.empty(), focus.scroll(), focus.help()));
    }

    static View view(Look look, Snapshot snapshot) {
        Setting setting =
                new Setting(Optional.of("Q-03"), Optional.of("sessions/Q-03-20261125-0942.jsonl"), look, true);
        return View.of(setting, snapshot, Focus.FIRST);
    }

    /** Before the first event. */
    static Sitting sitting() {
        return new Sitting(QUAYSIDE, Circuit.of(QUAYSIDE, List.of(bridge(), new KeyOpen(SILENT.index()))));
    }

    static Fault bridge() {
        return new Bridge(key("G").column(), key("G").index(), key("H").column(), key("H").index());
    }

    private static Diagnosis diagnosis() {
        Net column = QUAYSIDE.column(SILENT);
        Finding bridged = new Finding(
                List.of(new Suspect(bridge(), 0.99)),
                List.of(),
                0.99,
                List.of("C6 and C7 conduct both ways with no key pressed"),
                Optional.empty());
        Finding silent = new Finding(
                List.of(
                        new Suspect(new KeyOpen(SILENT.index()), 0.56),
                        new Suspect(new LinkOpen(QUAYSIDE.indexOf(column), 1, false), 0.41)),
                List.of(),
                0.97,
                List.of("V was pressed and nothing came"),
                Optional.of("touch C5 at V, the " + SolderSide.joint(QUAYSIDE, column, 2)
                        + " (solder side), with the flying lead."));
        return new Diagnosis(List.of(bridged, silent), 0.02, List.of());
    }

    /** What a key should close. */
    static Pair pair(String name) {
        return new Pair(key(name).row(), key(name).column());
    }

    static Key key(String name) {
        return QUAYSIDE.key(name).orElseThrow();
    }
}
