package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.circuit.Fault;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.e2e.Needs;
import buzzout.plan.Key;
import java.io.IOException;
import java.nio.file.Path;
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
