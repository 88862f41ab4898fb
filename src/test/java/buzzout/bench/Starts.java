package buzzout.bench;

import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.plan.PlanText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** From the launcher to the end of a short command, or to the first frame, beside an empty Java program in between. */
final class Starts {
    private static final int KINDS_OF_WORK = 3;
    private static final int ROUNDS = Integer.getInteger("buzzout.starts", 25);
    private static final double MOST_TIMES = 2.5;

    private final Path folder;
    private final Map<String, String> environment;

    private Starts(Path folder) {
        this.folder = folder;
        this.environment = Map.of("XDG_CACHE_HOME", folder.resolve("cache").toString());
    }

    private interface Start {
        /** Says how many nanoseconds it took. */
        long run() throws IOException, InterruptedException;
    }

    /** A start, and how long it took each time. */
    private static final class Timed {
        private final String name;
        private final Start start;
        private final double[] millis = new double[ROUNDS];

        Timed(String name, Start start) {
            this.name = name;
            this.start = start;
        }

        void run(int round) throws IOException, InterruptedException {
            millis[round] = start.run() / 1e6;
        }

        double median() {
            return Median.of(millis);
        }
    }

    static void measure(List<Row> rows) throws IOException, InterruptedException {
        try (Folder folder = Folder.make()) {
            Files.writeString(folder.resolve("plan.toml"), ExamplePlan.quaysideText());
            new Starts(folder.path()).into(rows);
        }
    }

    private void into(List<Row> rows) throws IOException, InterruptedException {
        run(Launched.command("check", "plan.toml"));
        run(Launched.command("simulate", "plan.toml", "--fault", "reversed:O", "--log", "log.jsonl"));
        run(Launched.command("demo", "--headless"));
        awaitArchives();
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String classes = System.getProperty("java.class.path");
        Timed empty = new Timed("", () -> run(List.of(java, "-cp", classes, Empty.class.getName())));
        List<Timed> starts = List.of(
                new Timed("--help", () -> run(Launched.command("--help"))),
                new Timed("check", () -> run(Launched.command("check", "plan.toml"))),
                new Timed("diagnose, one log", () -> run(Launched.command("diagnose", "log.jsonl"))),
                new Timed("demo, to the first frame", this::firstFrame));
        for (int round = 0; round < ROUNDS; round++) {
            empty.run(round);
            for (Timed start : starts) {
                start.run(round);
            }
        }
        rows.add(Row.of("start of an empty Java program, median of " + ROUNDS, empty.median(), "ms"));
        starts.forEach(start -> rows.add(Row.of(
                "start of %s (%.0f ms), beside an empty one".formatted(start.name, start.median()),
                start.median() / empty.median(),
                "times",
                MOST_TIMES)));
        bySize(rows);
    }

    private void bySize(List<Row> rows) throws IOException, InterruptedException {
        List<Timed> checks = new ArrayList<>();
        for (Plan plan : Sizes.BOARDS) {
            String file = plan.keys().size() + ".toml";
            Files.writeString(folder.resolve(file), PlanText.of(plan, List.of()));
            checks.add(new Timed(file, () -> run(Launched.command("check", file))));
        }
        for (int round = 0; round < ROUNDS; round++) {
            for (Timed check : checks) {
                check.run(round);
            }
        }
        Sizes.add(
                rows,
                "start of check",
                "ms",
                checks.stream().mapToDouble(Timed::median).toArray());
    }

    private long firstFrame() throws IOException, InterruptedException {
        try (PtyTerminal terminal = PtyTerminal.running(folder, environment, Launched.command("demo", "--quiet"))) {
            return terminal.await("Quayside 46") - terminal.begunAtNanos();
        }
    }

    private long run(List<String> command) throws IOException, InterruptedException {
        long begun = System.nanoTime();
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD);
        builder.environment().putAll(environment);
        builder.environment().put("LC_ALL", "C.UTF-8");
        builder.start().waitFor();
        return System.nanoTime() - begun;
    }

    /** The launcher makes one for each kind of work in the background, when that is done for the first time. */
    private void awaitArchives() throws IOException, InterruptedException {
        Path cache = folder.resolve("cache").resolve("buzzout");
        while (!areMade(cache)) {
            Thread.sleep(100);
        }
    }

    /** The launcher moves each out of where it is being made. */
    private static boolean areMade(Path cache) throws IOException {
        if (!Files.exists(cache)) {
            return false;
        }
        try (Stream<Path> files = Files.walk(cache)) {
            List<String> names =
                    files.map(file -> file.getFileName().toString()).toList();
            return Collections.frequency(names, "archive") == KINDS_OF_WORK && !names.contains("making");
        } catch (UncheckedIOException e) {
            return false;
        }
    }
}
