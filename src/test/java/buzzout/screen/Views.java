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
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

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

    /** Two of four held keys dropped together twice, and one of them once more. */
    static Sitting flexing() {
        Sitting sitting = new Sitting(QUAYSIDE, Circuit.of(QUAYSIDE)).found().quietCheckDone();
        int[] pair = {key("E").index(), key("R").index()};
        sitting.tell(new Action.FlexBegun())
                .move(true, key("W").index(), key("D").index())
                .move(true, pair);
        for (int millis : new int[] {18, 42}) {
            sitting.wait(700).move(false, pair).wait(millis).move(true, pair);
        }
        return sitting.wait(300).move(false, pair[0]).wait(7).move(true, pair[0]);
    }

    /** The second of two combinations showed a pair too many. */
    static Sitting holding() {
        Sitting sitting = new Sitting(QUAYSIDE, Circuit.of(QUAYSIDE)).found().quietCheckDone();
        int[] first = {key("Q").index(), key("W").index(), key("A").index(), key("S").index()};
        int[] second = {key("E").index(), key("D").index()};
        sitting.tell(new Action.CalledTogether(List.of(set(first), set(second), Set.of(4, 5))));
        sitting.wait(500).move(true, first).wait(300).move(false, first);
        Pair ghost = new Pair(key("E").row(), key("D").row());
        return sitting.wait(500)
                .move(true, second)
                .hear(new ProbeEvent.Closed(3_310_000, ghost))
                .wait(400)
                .move(false, second)
                .hear(new ProbeEvent.Opened(3_710_000, ghost));
    }

    private static Set<Integer> set(int... keys) {
        return Arrays.stream(keys).boxed().collect(Collectors.toSet());
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
