package buzzout.probe;

import buzzout.circuit.Fault;
import buzzout.circuit.Netlist;
import buzzout.plan.Key;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** The compiled sketch, executed by the sketch's bench, with a board on its pins and a pty as its port. */
public final class SketchBench implements Bench {
    private static final Path SKETCH = Path.of("probe-sketch");
    private static final Path BUILD = SKETCH.resolve("build");

    private final Process process;
    private final BufferedReader answers;
    private final Path folder;

    private SketchBench(Process process, Path folder) {
        this.process = process;
        this.answers = process.inputReader(StandardCharsets.US_ASCII);
        this.folder = folder;
    }

    /** Compiles the sketch and its bench; the end of what the build said where that cannot be done. */
    public static Optional<String> build() throws IOException, InterruptedException {
        try {
            Process make = new ProcessBuilder("make", "-C", SKETCH.toString(), "bench")
                    .redirectErrorStream(true)
                    .start();
            List<String> said = make.inputReader(StandardCharsets.UTF_8).lines().toList();
            return make.waitFor() == 0
                    ? Optional.empty()
                    : Optional.of("make bench in probe-sketch failed: "
                            + said.subList(Math.max(0, said.size() - 3), said.size()));
        } catch (IOException e) {
            return Optional.of("make cannot be run: " + e.getMessage());
        }
    }

    /** With {@link TestBoard} on its pins. */
    static SketchBench in(Path folder, Fault... faults) throws IOException {
        return wired(folder, Netlist.text(TestBoard.plan(), List.of(faults)));
    }

    /** With a board on its pins, given as {@link Netlist} writes it; it keeps its files in this folder. */
    public static SketchBench wired(Path folder, String wiring) throws IOException {
        Process process = new ProcessBuilder(
                        BUILD.resolve("bench").toString(),
                        BUILD.resolve("simulated.elf").toString(),
                        "--wiring",
                        Files.writeString(folder.resolve("wiring"), wiring).toString(),
                        "--link",
                        folder.resolve("port").toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        SketchBench bench = new SketchBench(process, folder);
        bench.expect("ok ready");
        return bench;
    }

    /** The path of its serial port. */
    public Path port() {
        return folder.resolve("port");
    }

    /** Solders the board anew. */
    public void rewire(String wiring) throws IOException {
        tell("load " + Files.writeString(folder.resolve("wiring"), wiring));
    }

    /** Presses a key, releases it, and keeps hands off for a moment, in milliseconds of the probe's time. */
    public void tap(Key key, int millis) throws IOException {
        tell("tap " + key.name() + " " + millis);
        tell("wait " + millis);
    }

    /** Closes and opens a key's contact so many times, so far apart, and leaves it open. */
    public void bounce(Key key, int times, int micros) throws IOException {
        tell("bounce " + key.name() + " " + times + " " + micros);
    }

    /** As {@link #bounce}, while the host goes on; until {@link #isOver}. */
    void bounceMeanwhile(Key key, int times, int micros) throws IOException {
        send("bounce " + key.name() + " " + times + " " + micros);
    }

    /** Whether that has come to its end, which is said once. */
    boolean isOver() throws IOException {
        boolean over = answers.ready();
        if (over) {
            expect("ok");
        }
        return over;
    }

    /** Lets time pass on the probe, in milliseconds. */
    public void pass(int millis) throws IOException {
        tell("wait " + millis);
    }

    /** Holds the flying lead against the joint of a net at a key. */
    public void touch(String net, String key) throws IOException {
        tell("touch " + net + " " + key);
    }

    /** Takes the flying lead away, and gives the hand time to find another joint. */
    public void lift() throws IOException {
        tell("lift");
        tell("wait 400");
    }

    @Override
    public LinkSource source() {
        return new NamedPort(port().toString(), true);
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

    public void unplug() throws IOException {
        tell("unplug");
    }

    public void replug() throws IOException {
        tell("replug");
    }

    /** Pulls the cable when so many bytes of a line are out, and the rest of it is not. */
    void unplugInALine(int bytes) throws IOException {
        tell("cut " + bytes);
    }

    /**
     * What the bench counted: changes that the sketch noticed, those whose line left whole towards a reader, lines cut,
     * bytes in and out, those that met no reader, cycles, sweeps.
     */
    Stats stats() throws IOException {
        send("stats");
        return new Stats(String.valueOf(answers.readLine()).replaceFirst("^ok ", ""));
    }

    /** Words, and after each its number. */
    record Stats(String text) {
        long count(String word) {
            List<String> words = List.of(text.split(" "));
            return Long.parseLong(words.get(words.indexOf(word) + 1));
        }

        @Override
        public String toString() {
            return text;
        }
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
        send(command);
        expect("ok");
    }

    private void send(String command) throws IOException {
        process.outputWriter(StandardCharsets.US_ASCII)
                .append(command)
                .append('\n')
                .flush();
    }

    private void expect(String wanted) throws IOException {
        String answer = answers.readLine();
        if (!wanted.equals(answer)) {
            throw new UncheckedIOException(new IOException("the bench said " + answer + ", not " + wanted));
        }
    }
}
