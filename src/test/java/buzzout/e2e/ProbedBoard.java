package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.plan.PlanReader;
import buzzout.probe.SketchBench;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Quayside 46 on the executed sketch, rows moved off the two pins that the sketch talks over there. */
final class ProbedBoard implements AutoCloseable {
    /** Longer than a contact bounces, in milliseconds. */
    private static final int HELD = 40;

    final Plan plan;
    final SketchBench bench;
    private final Path folder;

    private ProbedBoard(Plan plan, SketchBench bench, Path folder) {
        this.plan = plan;
        this.bench = bench;
        this.folder = folder;
    }

    /** Writes {@code plan.toml} into the folder and starts the bench with a sound board. */
    static ProbedBoard in(Path folder) throws IOException, InterruptedException {
        String text = ExamplePlan.quaysideText().replace("\"D2\"", "\"B0\"").replace("\"D3\"", "\"B1\"");
        Files.writeString(folder.resolve("plan.toml"), text);
        Plan plan = PlanReader.read(text, "plan.toml").plan().orElseThrow();
        return new ProbedBoard(plan, SketchBench.wired(folder, wiring(folder)), folder);
    }

    /** As the program itself writes it for the bench. */
    private static String wiring(Path folder, String... faults) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(List.of("netlist", "plan.toml"));
        for (String fault : faults) {
            words.addAll(List.of("--fault", fault));
        }
        Jar.Result netlist = Jar.run(folder, words.toArray(String[]::new));
        assertEquals(0, netlist.status(), netlist.err());
        return netlist.out();
    }

    void solder(String... faults) throws IOException, InterruptedException {
        bench.rewire(wiring(folder, faults));
    }

    void tap(String key) throws IOException {
        bench.tap(plan.key(key).orElseThrow(), HELD);
    }

    void tapAllBut(String... left) throws IOException {
        for (Key key : plan.keys()) {
            if (!List.of(left).contains(key.name())) {
                bench.tap(key, HELD);
            }
        }
    }

    /** Keys go down one after another and stay. */
    void hold(String... keys) throws IOException {
        for (String key : keys) {
            bench.press(plan.key(key).orElseThrow());
            bench.pass(HELD);
        }
        bench.pass(200);
    }

    void letGo(String... keys) throws IOException {
        for (String key : keys) {
            bench.release(plan.key(key).orElseThrow());
        }
        bench.pass(200);
    }

    /** A fault comes while keys are held, and goes again. */
    void flex(int millis, String fault) throws IOException, InterruptedException {
        String sound = wiring(folder);
        String broken = wiring(folder, fault);
        bench.rewire(broken);
        bench.pass(millis);
        bench.rewire(sound);
        bench.pass(200);
    }

    List<String> run(String... options) {
        List<String> words = new ArrayList<>(
                Jar.command("run", "plan.toml", "--port", bench.port().toString()));
        words.addAll(List.of(options));
        return words;
    }

    @Override
    public void close() {
        bench.close();
    }
}
