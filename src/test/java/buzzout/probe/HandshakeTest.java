package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class HandshakeTest {
    @Test
    void lists_many_pins_in_lines_that_a_small_receiver_can_hold() {
        List<Handshake.Step> steps = Handshake.of(planOf(30), SettleTime.USUAL);

        assertTrue(steps.stream().allMatch(step -> Line.encode(step.command()).length <= 64), steps::toString);
        List<String> added = steps.stream()
                .map(Handshake.Step::command)
                .filter(command -> command.startsWith("add "))
                .flatMap(command -> List.of(command.split(" ")).stream().skip(1))
                .toList();
        assertEquals(planOf(30).pins(), added);
    }

    @Test
    void waits_for_the_count_after_each_line() {
        assertEquals(
                List.of(
                        new Handshake.Step("forget", "ok forget"),
                        new Handshake.Step("add GPIO10 GPIO11 GPIO12 GPIO13 GPIO14 GPIO15", "ok add 6"),
                        new Handshake.Step("add GPIO16", "ok add 7"),
                        new Handshake.Step("settle 15", "ok settle 15"),
                        new Handshake.Step("go", "ok go 7")),
                Handshake.of(planOf(7), SettleTime.USUAL));
    }

    private static Plan planOf(int pins) {
        List<Net> nets = IntStream.range(0, pins)
                .mapToObj(pin ->
                        new Net("R" + pin, NetKind.ROW, "GPIO" + (10 + pin), List.of(), List.of(), 0, Optional.empty()))
                .toList();
        Plan board = TestBoard.plan();
        return new Plan("Pins", board.controller(), NetKind.ROW, NetKind.ROW, nets, List.of(), Optional.empty(), 5);
    }
}
