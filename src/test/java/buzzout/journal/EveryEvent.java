package buzzout.journal;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.ExamplePlan;
import buzzout.probe.Identity;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A session in which everything that can happen happens. */
final class EveryEvent {
    static final LogHeader HEADER = new LogHeader(
            Optional.of("0.1.0"),
            Optional.of(OffsetDateTime.parse("2026-11-25T10:14:05+01:00")),
            Optional.of("Q-03"),
            Optional.of(ExamplePlan.QUAYSIDE_FILE_NAME),
            ExamplePlan.quaysideText());

    private EveryEvent() {}

    static List<Event> list() {
        List<Event> events = new ArrayList<>();
        for (ProbeEvent event : probeEvents()) {
            events.add(new Event.FromProbe(events.size() * 7L, event));
        }
        for (Action action : actions()) {
            events.add(new Event.ByPerson(events.size() * 7L, action));
        }
        return events;
    }

    static List<ProbeEvent> probeEvents() {
        return List.of(
                new ProbeEvent.Found(new Identity(1, "1.0", "ATmega32U4", 26, 16_000_000), "/dev/ttyACM0"),
                new ProbeEvent.WholeState(900, Pairs.of(new Pair(0, 5), new Pair(0, 6), new Pair(7, 2))),
                new ProbeEvent.Closed(1_001_234, new Pair(1, 9)),
                new ProbeEvent.Opened(1_101_234, new Pair(1, 9)),
                new ProbeEvent.Lost(12),
                new ProbeEvent.Garbled(3, "\u001b[2J \u009b\u202e\"\\\n"),
                new ProbeEvent.LinkLost("The probe on /dev/ttyACM0 was unplugged."),
                new ProbeEvent.Refused("It offers no pin F0."));
    }

    static List<Action> actions() {
        return List.of(
                new Action.QuietCheckDone(),
                new Action.RollCallBegun(),
                new Action.Called(11),
                new Action.RollCallLeft(),
                new Action.NothingCame(45),
                new Action.AllPressed(),
                new Action.TakenBack(),
                new Action.Repaired("dead:Q"),
                new Action.Repaired("open:R3:M:,", List.of("dead:,", "open:R3:,:.")),
                new Action.FlexBegun(),
                new Action.FlexOver(),
                new Action.CalledTogether(List.of(Set.of(0, 1, 12), Set.of(3, 4))),
                new Action.Noted("the leg of Ä was cut \ud83d\udd27"),
                new Action.Ended());
    }
}
