package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.circuit.Fault;
import buzzout.circuit.Netlist;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.e2e.Needs;
import buzzout.plan.Key;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The compiled sketch, executed, keeps the same contract. */
class SketchTest extends ProbeContract {
    @TempDir
    Path folder;

    @BeforeAll
    static void needs_the_bench() throws IOException, InterruptedException {
        Needs.theSketchBench();
    }

    @Override
    Bench bench(Fault... faults) throws IOException {
        return SketchBench.in(folder, faults);
    }

    @Test
    void sees_ghosts_of_a_pin_that_rises_later_than_the_settle_and_none_once_it_has_measured() throws Exception {
        String wiring = Netlist.text(TestBoard.plan(), List.of()) + "rise B1 30\n";
        Key key = TestBoard.key("K6");
        try (SketchBench bench = SketchBench.wired(folder, wiring)) {
            try (Play play = new Play(bench.source())) {
                Pair ghost = new Pair(4, 3);
                assertEquals(
                        Pairs.of(ghost), play.first(ProbeEvent.WholeState.class).pairs());
            }
            try (Play play = new Play(bench.source(), SettleTime.MEASURED)) {
                assertEquals(Pairs.NONE, play.first(ProbeEvent.WholeState.class).pairs());
                bench.press(key);
                play.untilNow(Pairs.of(new Pair(key.row(), key.column())));
            }
        }
    }

    @Test
    void is_found_again_after_an_unplug() throws Exception {
        Key key = TestBoard.key("K6");
        try (SketchBench bench = SketchBench.in(folder);
                Play play = new Play(bench.source())) {
            play.first(ProbeEvent.WholeState.class);
            bench.unplug();
            play.first(ProbeEvent.LinkLost.class);
            int before = play.events().size();
            bench.press(key);
            bench.replug();
            play.first(ProbeEvent.Found.class, before);

            assertEquals(
                    Pairs.of(new Pair(key.row(), key.column())),
                    play.first(ProbeEvent.WholeState.class, before).pairs());
        }
    }
}
