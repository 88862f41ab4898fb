package buzzout.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a sweep costs on the executed sketch, beside its floor of pins times settle. */
final class Sweeps {
    /** From here on the limit holds: with few pins the work between two sweeps weighs more. */
    private static final int FEWEST_PINS = 20;

    private static final double MOST_TIMES = 1.5;
    private static final Pattern LINE =
            Pattern.compile("(\\d+) pins: .*: ([0-9.]+) times the floor, (\\d+) sweeps a second.*");

    private Sweeps() {}

    static void measure(List<Row> rows) throws IOException, InterruptedException {
        Process make = new ProcessBuilder("make", "-s", "-C", "probe-sketch", "cycles")
                .redirectErrorStream(true)
                .start();
        for (String line : make.inputReader(StandardCharsets.UTF_8).lines().toList()) {
            Matcher said = LINE.matcher(line);
            if (said.matches()) {
                String what = "sweep of " + said.group(1) + " pins, beside its floor (" + said.group(3) + " a second)";
                double times = Double.parseDouble(said.group(2));
                boolean few = Integer.parseInt(said.group(1)) < FEWEST_PINS;
                rows.add(few ? Row.of(what, times, "times") : Row.of(what, times, "times", MOST_TIMES));
            }
        }
        if (make.waitFor() != 0) {
            System.err.println("no sweeps: make cycles in probe-sketch failed; DEVELOPERS.md says what it needs");
        }
    }
}
