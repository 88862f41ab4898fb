package buzzout.cli;

import buzzout.plan.ExamplePlan;
import buzzout.screen.BoardScreen;
import buzzout.screen.Request;
import buzzout.screen.Setting;
import buzzout.screen.Snapshot;
import buzzout.screen.Source;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Goes once through what people start most, and says nothing. The launcher runs it to learn which classes the program
 * uses, and lays them into a class-data archive, from which the next start takes them.
 */
public final class Rehearsal {
    private static final String PLAN = "plan.toml";
    private static final String LOG = "log.jsonl";

    private Rehearsal() {}

    /**
     * Rehearses.
     *
     * @throws IOException if there is no room for a folder of temporary files
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createTempDirectory("buzzout-rehearsal-");
        try {
            Files.writeString(folder.resolve(PLAN), ExamplePlan.quaysideText());
            Surroundings surroundings = surroundings(folder);
            Objects.requireNonNull(Main.class); // so that it is in the archive too
            Program.run(surroundings, "--help");
            Program.run(surroundings, "check", PLAN);
            Program.run(surroundings, "demo", "--headless");
            Program.run(surroundings, "diagnose", log(folder));
            Program.run(surroundings, "simulate", PLAN, "--fault", "reversed:O", "--log", LOG);
            Program.run(surroundings, "diagnose", LOG);
            Program.run(surroundings, "run", PLAN, "--help");
            draw(surroundings);
        } finally {
            remove(folder);
        }
    }

    private static Surroundings surroundings(Path folder) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return new Surroundings(
                new Console(nowhere, nowhere),
                InputStream.nullInputStream(),
                folder,
                Surroundings.CLOCK,
                Map.of("LANG", "C.UTF-8"),
                false);
    }

    private static String log(Path folder) throws IOException {
        try (Stream<Path> logs = Files.list(folder.resolve("sessions"))) {
            return logs.findFirst().orElseThrow().toString();
        }
    }

    private static void draw(Surroundings surroundings) throws IOException {
        Setting setting =
                new Setting(Optional.empty(), Optional.empty(), Common.USUAL.look(surroundings.environment()), true);
        Snapshot snapshot = Snapshot.of(ExamplePlan.quayside());
        BoardScreen.drawInMemory(setting, new Source() {
            @Override
            public Snapshot now() {
                return snapshot;
            }

            @Override
            public void ask(Request request) {}
        });
    }

    private static void remove(Path folder) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path file : files) {
            Files.delete(file);
        }
    }
}
