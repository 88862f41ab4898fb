package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Fault;
import buzzout.circuit.LeadOff;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.circuit.PinDragged;
import buzzout.plan.Key;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Keeps the contract in simulated time, and what only a simulated board can be made to do. */
class SimulatedBoardTest extends ProbeContract {
    private static final Key K6 = TestBoard.key("K6");
    private static final Pair OF_K6 = new Pair(1, 4);

    private final SimulatedBoard board = board();
    private final Play play = new Play(board);

    @Override
    Bench bench(Fault... faults) {
        return Bench.of(board(faults));
    }

    @Test
    void bounces_the_same_way_for_the_same_seed_and_comes_to_rest() throws Exception {
        List<List<ProbeEvent>> runs = new ArrayList<>();
        for (int run = 0; run < 2; run++) {
            SimulatedBoard again = board();
            Play once = new Play(again);
            once.first(ProbeEvent.WholeState.class);
            again.press(K6);
            once.pass(5);
            runs.add(once.events());
        }

        assertEquals(runs.get(0), runs.get(1));
        assertTrue(
                runs.get(0).stream().filter(ProbeEvent.Closed.class::isInstance).count() > 1, "no bounce");
        assertEquals(Pairs.of(OF_K6), Play.now(runs.get(0)));
    }

    @Test
    void lets_a_key_bounce_as_long_as_told() throws Exception {
        play.first(ProbeEvent.WholeState.class);
        board.bounce(K6, 30_000);
        board.press(K6);
        play.pass(100);

        List<Long> times = Play.times(play.events());
        long bounce = times.get(times.size() - 1) - times.get(1);
        assertTrue(bounce > 25_000 && bounce < 31_000, () -> "bounced for " + bounce);
    }

    @Test
    void says_so_when_it_is_unplugged_and_is_found_again() throws Exception {
        play.first(ProbeEvent.WholeState.class);
        board.press(K6);
        play.untilNow(Pairs.of(OF_K6));
        board.unplug();
        play.pass(3_000);
        int before = play.events().size();
        assertTrue(play.events().get(before - 1) instanceof ProbeEvent.LinkLost);
        board.release(K6);
        board.replug();

        play.first(ProbeEvent.Found.class, before);
        assertEquals(Pairs.NONE, play.first(ProbeEvent.WholeState.class, before).pairs());
    }

    @Test
    void repeats_no_complaint_while_it_stays_unplugged() throws Exception {
        board.unplug();
        play.pass(60_000);

        assertEquals(List.of(new ProbeEvent.LinkLost("The simulated board is unplugged.")), play.events());
    }

    @Test
    void owns_up_to_changes_that_it_lost() throws Exception {
        play.first(ProbeEvent.WholeState.class);
        board.bounce(K6, 0);
        board.lose(1);
        board.press(K6);
        play.untilNow(Pairs.of(OF_K6));

        assertEquals(1, play.first(ProbeEvent.Lost.class).changes());
        assertFalse(play.events().stream().anyMatch(ProbeEvent.Closed.class::isInstance));
    }

    @Test
    void is_understood_through_noise_on_the_wire() throws Exception {
        play.first(ProbeEvent.WholeState.class);
        board.noise("\u001b[2J\u0000\u00ff\n".getBytes(StandardCharsets.ISO_8859_1));
        board.press(K6);
        play.untilNow(Pairs.of(OF_K6));

        assertEquals(new ProbeEvent.Garbled(1, "\\x1B[2J\\x00\\xFF"), play.first(ProbeEvent.Garbled.class));
    }

    @Test
    void tells_what_a_repair_changes() throws Exception {
        play.first(ProbeEvent.WholeState.class);
        board.press(K6);
        play.untilNow(Pairs.of(OF_K6));
        board.setFaults(List.of(new LeadOff(K6.row())));
        play.untilNow(Pairs.NONE);
        board.setFaults(List.of());
        play.untilNow(Pairs.of(OF_K6));
    }

    @Test
    void reads_doubtful_levels_high_or_low_as_told() throws Exception {
        board.setFaults(List.of(new PinDragged(0)));
        assertEquals(Pairs.NONE, play.first(ProbeEvent.WholeState.class).pairs());
        board.readBetweenAsLow(true);
        play.pass(50);

        assertTrue(Play.now(play.events()).contains(new Pair(1, 0)));
    }

    @Test
    void gives_up_an_old_link_when_a_new_one_opens() throws Exception {
        ByteLink old = board.open().link();
        board.open();

        assertThrows(LinkDown.class, () -> old.read(new byte[10], 10));
        assertThrows(LinkDown.class, () -> old.write(new byte[10]));
    }

    private static SimulatedBoard board(Fault... faults) {
        return SimulatedBoard.inSimulatedTime(TestBoard.plan(), List.of(faults), 1);
    }
}
