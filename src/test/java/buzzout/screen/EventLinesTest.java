package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.circuit.Circuit;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Press;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class EventLinesTest {
    private static final Plan PLAN = Views.QUAYSIDE;
    private static final Key Q = PLAN.key("Q").orElseThrow();
    private static final Pair PLANNED = new Pair(Q.row(), Q.column());
    private static final Pair BESIDE = new Pair(Q.row(), Q.column() + 1);

    @Test
    void a_press_is_told_with_what_it_closed() {
        assertEquals("Q pressed: R1→C2, as planned", told(Pairs.of(PLANNED)));
        assertEquals("Q pressed: R1→C2, R1→C3, with company", told(Pairs.of(PLANNED, BESIDE)));
        assertEquals("Q pressed: C2→R1, the wrong way round", told(Pairs.of(PLANNED.turned())));
        assertEquals("Q pressed: R1→C2, C2→R1, both ways", told(Pairs.of(PLANNED, PLANNED.turned())));
        assertEquals("Q pressed: R1→C3, planned R1→C2", told(Pairs.of(BESIDE)));
    }

    @Test
    void a_press_that_grows_stays_one_line() {
        EventLines lines = ready().hear(new ProbeEvent.Closed(2_000_000, PLANNED))
                .hear(new ProbeEvent.Closed(2_001_000, BESIDE))
                .hear(new ProbeEvent.Opened(2_090_000, BESIDE))
                .hear(new ProbeEvent.Opened(2_090_000, PLANNED))
                .snapshot()
                .events();
        assertEquals(
                List.of("Q pressed: R1→C2, R1→C3, with company"),
                lines.last(1).stream().map(EventLines.Line::text).toList());
        assertEquals(
                ready().snapshot().events().lines().size() + 1, lines.lines().size());
    }

    @Test
    void a_press_taken_back_keeps_its_line_when_an_earlier_one_grows() {
        EventLines lines = ready().hear(new ProbeEvent.Closed(2_000_000, PLANNED))
                .tell(new Action.NothingCame(Q.index() + 1))
                .tell(new Action.TakenBack())
                .hear(new ProbeEvent.Closed(2_001_000, BESIDE))
                .snapshot()
                .events();
        assertEquals(
                List.of("W pressed: nothing came", "the last press or word taken back"),
                lines.last(2).stream().map(EventLines.Line::text).toList());
    }

    @Test
    void what_the_person_says_and_the_link_does_is_told_too() {
        EventLines lines = ready().tell(new Action.NothingCame(Q.index()))
                .hear(new ProbeEvent.LinkLost("unplugged"))
                .hear(new ProbeEvent.Lost(1))
                .hear(new ProbeEvent.WholeState(0, Pairs.NONE))
                .snapshot()
                .events();
        assertEquals(
                List.of(
                        "probe found on /dev/ttyACM0: ATmega32U4, sketch 0.1.0",
                        "quiet check done",
                        "Q pressed: nothing came",
                        "link lost: unplugged",
                        "1 change from the probe lost; it tells its whole state again"),
                lines.lines().stream().map(EventLines.Line::text).toList());
    }

    @Test
    void only_the_newest_are_kept() {
        Sitting sitting = ready();
        for (int at = 0; at < 1000; at++) {
            sitting.tell(new Action.Noted("n" + at));
        }
        EventLines lines = sitting.snapshot().events();
        assertEquals(200, lines.lines().size());
        assertEquals("note: n999", lines.last(1).get(0).text());
    }

    private static Sitting ready() {
        return new Sitting(PLAN, Circuit.of(PLAN)).found().quietCheckDone();
    }

    private static String told(Pairs pairs) {
        Press press = new Press(0, 0, 0, pairs, OptionalInt.of(Q.index()), OptionalInt.empty(), false);
        return PressWords.of(PLAN, press);
    }
}
