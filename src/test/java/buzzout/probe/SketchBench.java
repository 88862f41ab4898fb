package buzzout.probe;

import buzzout.circuit.Bridge;
import buzzout.circuit.DiodeReversed;
import buzzout.circuit.Fault;
import buzzout.circuit.SwitchHeld;
import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The compiled sketch, executed by the sketch's bench, with {@link TestBoard} on its pins and a pty as its port. */
final class SketchBench implements Bench {
    private static final Path BUILD = Path.of(System.getProperty("buzzout.sketch.build", "probe-sketch/build"));

    private final Process process;
    private final BufferedReader answers;
    private final Path port;

    private SketchBench(Process process, Path port) {
        this.process = process;
        this.answers = process.inputReader(StandardCharsets.US_ASCII);
        this.port = port;
    }

    static boolean isBuilt() {
        return Files.isExecutable(BUILD.resolve("bench"));
    }

    static SketchBench in(Path folder, Fault... faults) throws IOException {
        Path wiring = Files.write(folder.resolve("wiring"), wiring(TestBoard.plan(), List.of(faults)));
        Path port = folder.resolve("port");
        Process process = new ProcessBuilder(
                        BUILD.resolve("bench").toString(),
                        BUILD.resolve("simulated.elf").toString(),
                        "--wiring",
                        wiring.toString(),
                        "--link",
                        port.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        SketchBench bench = new SketchBench(process, port);
        bench.expect("ok ready");
        return bench;
    }

    @Override
    public LinkSource source() {
        return new NamedPort(port.toString(), true);
    }

    @Override
    public void press(Key key) throws IOException {
        tell("press " + key.name());
    }

    @Override
    public void release(Key key) throws IOException {
        tell("release " + key.name());
    }

    @Override
    public void reset() throws IOException {
        tell("reset");
    }

    void unplug() throws IOException {
        tell("unplug");
    }

    void replug() throws IOException {
        tell("replug");
    }

    @Override
    public void close() {
        process.destroy();
        try {
            process.waitFor(5, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private void tell(String command) throws IOException {
        process.outputWriter(StandardCharsets.US_ASCII)
                .append(command)
                .append('\n')
                .flush();
        expect("ok");
    }

    private void expect(String wanted) throws IOException {
        String answer = answers.readLine();
        if (!wanted.equals(answer)) {
            throw new UncheckedIOException(new IOException("the bench said " + answer + ", not " + wanted));
        }
    }

    /** Each net is one node, which is all that the contract's faults need. */
    private static List<String> wiring(Plan plan, List<Fault> faults) {
        List<String> lines = new ArrayList<>();
        for (Net net : plan.nets()) {
            lines.add("pin " + net.pin() + " " + net.name());
        }
        for (Key key : plan.keys()) {
            String row = plan.row(key).name();
            String column = plan.column(key).name();
            boolean reversed = faults.contains(new DiodeReversed(key.index()));
            lines.add("switch " + key.name() + " " + column + " in-" + key.name());
            lines.add(reversed ? "diode " + row + " in-" + key.name() : "diode in-" + key.name() + " " + row);
            if (faults.contains(new SwitchHeld(key.index()))) {
                lines.add("wire " + column + " in-" + key.name());
            }
        }
        for (Fault fault : faults) {
            if (fault instanceof Bridge bridge) {
                lines.add("wire " + plan.nets().get(bridge.net()).name() + " "
                        + plan.nets().get(bridge.otherNet()).name());
            }
        }
        return lines;
    }
}
