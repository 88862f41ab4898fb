package buzzout.session;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.ProbeEvent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Takes events into a session, one after another. */
final class Fold {
    private Fold() {}

    static Session after(Session session, Event event) {
        Draft draft = new Draft(session);
        if (event instanceof Event.FromProbe from) {
            take(draft, from.atMillis(), from.event());
        } else if (event instanceof Event.ByPerson by) {
            take(draft, by.atMillis(), by.action());
        }
        return draft.done();
    }

    private static void take(Draft draft, long atMillis, ProbeEvent event) {
        if (event instanceof ProbeEvent.Closed closed) {
            close(draft, atMillis, closed.micros(), closed.pair());
        } else if (event instanceof ProbeEvent.Opened opened) {
            open(draft, opened.micros(), opened.pair());
        } else if (event instanceof ProbeEvent.WholeState whole) {
            become(draft, atMillis, whole);
        } else if (event instanceof ProbeEvent.Found found) {
            draft.probe = Optional.of(found.identity());
            draft.port = Optional.of(found.port());
            draft.linkTrouble = Optional.empty();
            boolean goesOn = draft.stage == Stage.ENDED;
            if (draft.stage == Stage.REPAIRING || (goesOn && !draft.repairs.isEmpty())) {
                testAgain(draft, atMillis);
            } else if (draft.stage == Stage.NO_PROBE || goesOn) {
                draft.stage = Stage.QUIET_CHECK;
            }
        } else if (event instanceof ProbeEvent.Lost lost) {
            draft.lostChanges += lost.changes();
            Turns.breakOff(draft);
        } else if (event instanceof ProbeEvent.Garbled garbled) {
            draft.garbledLines += garbled.lines();
        } else if (event instanceof ProbeEvent.LinkLost down) {
            draft.linkTrouble = Optional.of(down.why());
            draft.now = draft.quiet;
            draft.flex = draft.flex.letGo();
            draft.allAtOnce = draft.allAtOnce.letGo();
            Turns.breakOff(draft);
            draft.lead = draft.lead.linkLost();
        } else if (event instanceof ProbeEvent.Refused refused) {
            draft.linkTrouble = Optional.of(refused.why());
        }
    }

    private static void take(Draft draft, long atMillis, Action action) {
        if (action instanceof Action.QuietCheckDone) {
            if (draft.stage == Stage.REPAIRING) {
                testAgain(draft, atMillis);
            }
            draft.quiet = draft.now;
            draft.lead = draft.lead.atRest();
            draft.stage = Stage.PRESSING;
        } else if (action instanceof Action.RollCallBegun) {
            Turns.breakOff(draft);
            draft.rollCall = Optional.of(RollCall.of(draft.before.plan().keys().size(), draft.presses, atMillis));
        } else if (action instanceof Action.RollCallLeft) {
            draft.rollCall = Optional.empty();
            draft.called = OptionalInt.empty();
        } else if (action instanceof Action.Called named) {
            draft.called = OptionalInt.of(named.key());
        } else if (action instanceof Action.ReadThroughBegun) {
            Turns.begin(draft);
        } else if (action instanceof Action.ReadThroughEnded) {
            Turns.lineUp(draft, atMillis);
        } else if (action instanceof Action.NothingCame nothing) {
            Turns.settle(draft);
            OptionalInt key = OptionalInt.of(nothing.key());
            draft.presses = draft.presses.with(new Press(atMillis, 0, Long.MIN_VALUE, Pairs.NONE, key, key, false));
            draft.called = OptionalInt.empty();
        } else if (action instanceof Action.TouchCalled touch) {
            draft.lead = draft.lead.asking(touch.joint());
        } else if (action instanceof Action.TouchedNothing nothing) {
            draft.lead = draft.lead.metNothing(atMillis, nothing.joint());
        } else if (action instanceof Action.AllPressed) {
            draft.everyKeyPressed = true;
        } else if (action instanceof Action.TakenBack) {
            takeBack(draft);
        } else if (action instanceof Action.Repaired repaired) {
            repair(draft, atMillis, repaired);
        } else if (action instanceof Action.FlexBegun) {
            draft.allAtOnce = draft.allAtOnce.calling(List.of());
            draft.flex = draft.flex.begun();
        } else if (action instanceof Action.FlexOver) {
            draft.flex = draft.flex.over();
        } else if (action instanceof Action.CalledTogether called) {
            draft.flex = draft.flex.over();
            draft.allAtOnce = draft.allAtOnce.calling(called.combinations());
        } else if (action instanceof Action.Ended) {
            draft.stage = Stage.ENDED;
        }
    }

    private static void close(Draft draft, long atMillis, long micros, Pair pair) {
        if (Lead.isOn(draft.before.plan(), pair)) {
            draft.lead = draft.lead.closed(atMillis, micros, pair, draft.keyIsDown());
            return;
        }
        Pairs before = draft.now;
        draft.now = before.with(pair);
        if (draft.stage != Stage.PRESSING || draft.quiet.contains(pair)) {
            return;
        }
        boolean held = hold(draft, before, micros);
        boolean isTheirs = held;
        for (int key : whoCloses(draft, pair)) {
            if (held || draft.flex.isBounce(key, micros)) {
                isTheirs = true;
                draft.flex = draft.flex.closes(key, micros);
            }
        }
        if (isTheirs) {
            return;
        }
        boolean keyDown = !before.minus(draft.quiet).isEmpty();
        Press last = draft.lastPress().orElse(null);
        if (last != null && PressTiming.belongsTo(last, micros, pair, keyDown)) {
            draft.replaceLastPress(grown(
                    draft, last, last.contact().closes(micros), last.pairs().with(pair)));
            return;
        }
        if (draft.slip
                .filter(slip -> PressTiming.belongsTo(slip, micros, pair, keyDown))
                .isPresent()) {
            draft.slip = draft.slip.map(slip ->
                    slip.with(slip.contact().closes(micros), slip.pairs().with(pair)));
            return;
        }
        draft.slip = Optional.empty();
        if (!keyDown) {
            draft.quiet = draft.quiet.and(before);
        }
        OptionalInt called = OptionalInt.empty();
        if (!keyDown) {
            called = draft.called;
            draft.called = OptionalInt.empty();
        }
        Turns.settle(draft);
        Contact contact = Contact.firstClosed(micros);
        Press begun = new Press(atMillis, contact, Pairs.NONE, OptionalInt.empty(), called, keyDown, false);
        draft.presses = draft.presses.with(grown(draft, begun, contact, Pairs.of(pair)));
    }

    /** Whether keys are being held rather than pressed; tells the combinations of all at once. */
    private static boolean hold(Draft draft, Pairs before, long micros) {
        if (draft.allAtOnce.isOn()) {
            Set<Integer> called = draft.allAtOnce.called();
            draft.allAtOnce = draft.allAtOnce.changed(
                    draft.before.plan(), draft.quiet, before.minus(draft.quiet), draft.now.minus(draft.quiet), micros);
            if (!draft.allAtOnce.isOn()) {
                draft.flex = draft.flex.lettingGo(called, micros);
            }
            return true;
        }
        return draft.flex.on();
    }

    /** Of keys that are or were held, those that should close this pair, or would if their diode were turned. */
    private static List<Integer> whoCloses(Draft draft, Pair pair) {
        boolean matters = draft.flex.on() || !draft.flex.grips().isEmpty();
        return matters && !draft.quiet.contains(pair)
                ? draft.before.plan().keys().stream()
                        .filter(key -> Expected.pair(draft.before.plan(), key).equals(pair)
                                || Expected.pair(draft.before.plan(), key)
                                        .turned()
                                        .equals(pair))
                        .map(Key::index)
                        .toList()
                : List.of();
    }

    private static Press grown(Draft draft, Press press, Contact contact, Pairs pairs) {
        Plan plan = draft.before.plan();
        OptionalInt presumed = press.presumed();
        if (!press.read()) {
            presumed = StuckPins.fallen(plan, draft.quiet, pairs).isPresent()
                    ? OptionalInt.empty()
                    : Presumption.of(plan, draft.before.presses(), press, pairs);
        }
        return new Press(press.atMillis(), contact, pairs, presumed, press.called(), press.inCompany(), press.read());
    }

    private static void open(Draft draft, long micros, Pair pair) {
        if (Lead.isOn(draft.before.plan(), pair)) {
            draft.lead = draft.lead.opened(micros, pair);
            return;
        }
        Pairs before = draft.now;
        draft.now = before.without(pair);
        boolean held = draft.stage == Stage.PRESSING && hold(draft, before, micros);
        whoCloses(draft, pair).forEach(key -> draft.flex = draft.flex.opens(key, micros));
        if (held) {
            return;
        }
        draft.lastPress()
                .filter(last -> last.pairs().contains(pair))
                .ifPresent(
                        last -> draft.replaceLastPress(last.with(last.contact().opens(micros))));
        draft.slip = draft.slip.map(
                slip -> slip.pairs().contains(pair) ? slip.with(slip.contact().opens(micros)) : slip);
    }

    /** A whole state stands for every change that led to it. */
    private static void become(Draft draft, long atMillis, ProbeEvent.WholeState whole) {
        Pairs after = whole.pairs();
        if (draft.stage != Stage.PRESSING) {
            draft.now = after.minus(Lead.of(draft.before.plan(), after));
        }
        Pairs before = draft.now.plus(draft.lead.now());
        before.minus(after).list().forEach(pair -> open(draft, whole.micros(), pair));
        after.minus(before).list().forEach(pair -> close(draft, atMillis, whole.micros(), pair));
    }

    private static void takeBack(Draft draft) {
        if (draft.stage != Stage.REPAIRING && Turns.takenBack(draft)) {
            return;
        }
        if (draft.stage == Stage.REPAIRING) {
            draft.repairs.clear();
            draft.stage = Stage.PRESSING;
        } else if (draft.flex.on()) {
            draft.flex = draft.flex.takenBack();
        } else if (draft.allAtOnce.isOn()) {
            draft.allAtOnce = draft.allAtOnce.takenBack();
        } else if (draft.everyKeyPressed) {
            draft.everyKeyPressed = false;
        } else if (lastWasTouch(draft)) {
            draft.lead = draft.lead.takenBack();
        } else if (!draft.presses.isEmpty()) {
            Press last = draft.lastPress().orElseThrow();
            draft.presses = draft.presses.first(draft.presses.size() - 1);
            draft.slip = Optional.of(last)
                    .filter(press -> !press.pairs().and(draft.now).isEmpty());
            draft.called = last.called().isPresent() ? last.called() : draft.called;
        }
    }

    private static boolean lastWasTouch(Draft draft) {
        if (draft.lead.called().isPresent()) {
            return true;
        }
        long lastPress = draft.lastPress().map(Press::atMillis).orElse(-1L);
        return draft.lead
                .lastAnswer()
                .filter(touch -> touch.atMillis() > lastPress)
                .isPresent();
    }

    /** What is repaired, and once it was said before: that it is done. */
    private static void repair(Draft draft, long atMillis, Action.Repaired repaired) {
        List<Fault> faults = Stream.concat(Stream.of(repaired.code()), repaired.orAlike().stream())
                .flatMap(code -> Catalogue.find(draft.before.plan(), code).stream())
                .toList();
        if (faults.isEmpty() || (draft.stage != Stage.PRESSING && draft.stage != Stage.REPAIRING)) {
            return;
        }
        if (draft.repairs.containsAll(faults)) {
            testAgain(draft, atMillis);
            return;
        }
        draft.repairs.addAll(faults);
        draft.stage = Stage.REPAIRING;
    }

    /** What the repairs can have changed counts as untested and is called; a new quiet check comes first. */
    private static void testAgain(Draft draft, long atMillis) {
        for (Fault fault : draft.repairs) {
            draft.lead = draft.lead.forgetting(draft.before.plan(), fault.nets(draft.before.plan()));
        }
        Retest.Due due = Retest.after(draft.before.plan(), draft.repairs, draft.presses);
        Set<Integer> keys = new TreeSet<>(due.keys());
        List<Fault> repaired = List.copyOf(draft.repairs);
        Optional<RollCall> unfinished = draft.rollCall
                .filter(RollCall::isRetest)
                .filter(retest -> !retest.left(draft.presses).isEmpty());
        if (unfinished.isPresent()) {
            keys.addAll(unfinished.get().left(draft.presses));
            repaired = Stream.concat(unfinished.get().repaired().stream(), repaired.stream())
                    .distinct()
                    .toList();
        }
        draft.presses = Growing.of(due.kept());
        draft.repairs.clear();
        draft.rollCall = Optional.of(new RollCall(keys, atMillis, repaired));
        draft.called = OptionalInt.empty();
        draft.everyKeyPressed = false;
        draft.flex = FlexCheck.NONE;
        draft.allAtOnce = AllAtOnce.NONE;
        draft.readThrough = Optional.empty();
        draft.stage = Stage.QUIET_CHECK;
    }
}
