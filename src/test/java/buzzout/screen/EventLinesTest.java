package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Press;
import buzzout.session.Session;
import buzzout.session.Stage;
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
        Session none = with(List.of());
        Session first = with(List.of(press(Pairs.of(PLANNED))));
        Session grown = with(List.of(press(Pairs.of(PLANNED, BESIDE))));
        EventLines lines =
                EventLines.NONE.after(none, closed(2000, PLANNED), first).after(first, closed(2001, BESIDE), grown);
        assertEquals(List.of(new EventLines.Line(2000, "Q pressed: R1→C2, R1→C3, with company", true)), lines.lines());
    }

    @Test
    void what_the_person_says_and_the_link_does_is_told_too() {
        Session session = with(List.of());
        EventLines lines = EventLines.NONE
                .after(session, new Event.ByPerson(1, new Action.NothingCame(Q.index())), session)
                .after(session, new Event.FromProbe(2, new ProbeEvent.LinkLost("unplugged")), session)
                .after(session, new Event.FromProbe(3, new ProbeEvent.Lost(1)), session)
                .after(session, new Event.FromProbe(4, new ProbeEvent.WholeState(0, Pairs.NONE)), session);
        assertEquals(
                List.of(
                        "Q pressed: nothing came",
                        "link lost: unplugged",
                        "1 change from the probe lost; it tells its whole state again"),
                lines.lines().stream().map(EventLines.Line::text).toList());
    }

    @Test
    void only_the_newest_are_kept() {
        Session session = with(List.of());
        EventLines lines = EventLines.NONE;
        for (int at = 0; at < 1000; at++) {
            lines = lines.after(session, new Event.ByPerson(at, new Action.Noted("n" + at)), session);
        }
        assertEquals(200, lines.lines().size());
        assertEquals("note: n999", lines.last(1).get(0).text());
    }

    private static String told(Pairs pairs) {
        return EventLines.NONE
                .after(with(List.of()), closed(5, PLANNED), with(List.of(press(pairs))))
                .lines()
                .get(0)
                .text();
    }

    private static Press press(Pairs pairs) {
        return new Press(0, pairs, OptionalInt.of(Q.index()), OptionalInt.empty(), false);
    }

    private static Event closed(long atMillis, Pair pair) {
        return new Event.FromProbe(atMillis, new ProbeEvent.Closed(atMillis * 1000, pair));
    }

    private static Session with(List<Press> presses) {
        return Views.with(Views.session(Stage.PRESSING), Session.of(PLAN).states(), presses);
    }
}
