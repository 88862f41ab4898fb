package buzzout.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.diagnosis.Engine;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.ProbeEvent;
import buzzout.probe.ProbeTalk;
import buzzout.probe.SimulatedBoard;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Session;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same events give the same session and findings, whether they come from a board or from a log. */
class SameSessionTest {
    private static final Plan PLAN = ExamplePlan.quayside();

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void a_session_on_a_board_is_the_same_from_its_log(long seed) throws Exception {
        List<Fault> faults = Stream.of("open:R3:M:,", "bridge:C2:C3:A:S", "reversed:O", "held:Ctrl")
                .map(code -> Catalogue.find(PLAN, code).orElseThrow())
                .toList();
        Path path = folder.resolve("log.jsonl");
        LogHeader header = new LogHeader(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), ExamplePlan.quaysideText());
        Session live = Session.of(PLAN);
        try (Journal journal = Journal.create(path, header, PLAN)) {
            for (Event event : played(faults, seed)) {
                journal.append(event);
                live = live.after(event);
            }
        }
        LogFile read = JournalReader.read(path);
        assertEquals(List.of(), read.problems());
        Session replayed = read.log().orElseThrow().replayed();
        assertEquals(live, replayed, "seed " + seed);
        assertEquals(live.states(), replayed.states());
        assertEquals(new Engine(PLAN).weigh(live.evidence()), new Engine(replayed.plan()).weigh(replayed.evidence()));
        assertTrue(live.presses().size() > 40, "seed " + seed);
    }

    /** Every key pressed once, slowly, on a board whose contacts bounce. */
    private static List<Event> played(List<Fault> faults, long seed) throws InterruptedException {
        SimulatedBoard board = SimulatedBoard.inSimulatedTime(PLAN, faults, seed);
        List<Event> events = new ArrayList<>();
        try (ProbeTalk talk = new ProbeTalk(PLAN, board)) {
            take(events, board, talk.runFor(2_000));
            events.add(new Event.ByPerson(millis(board), new Action.QuietCheckDone()));
            for (Key key : PLAN.keys()) {
                board.press(key);
                take(events, board, talk.runFor(80));
                board.release(key);
                take(events, board, talk.runFor(80));
            }
        }
        events.add(new Event.ByPerson(millis(board), new Action.AllPressed()));
        events.add(new Event.ByPerson(millis(board), new Action.Ended()));
        return events;
    }

    private static void take(List<Event> events, SimulatedBoard board, List<ProbeEvent> came) {
        came.forEach(event -> events.add(new Event.FromProbe(millis(board), event)));
    }

    private static long millis(SimulatedBoard board) {
        return board.time().micros() / 1_000;
    }
}
