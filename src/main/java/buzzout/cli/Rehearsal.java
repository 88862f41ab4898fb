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
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Goes once through what people do most with a plan, with logs or at a board, and says nothing. The launcher runs it to
 * learn which classes that takes, and lays them into a class-data archive, from which the next start takes them.
 */
public final class Rehearsal {
    private static final String PLAN = "plan.toml";
    private static final String LOG = "log.jsonl";

    private Rehearsal() {}

    /**
     * Rehearses. Its files stay in the folder in which it is started.
     *
     * @param arguments one: {@code plan}, {@code logs} or {@code board}
     * @throws IOException if there is no room for a plan and a log
     */
    public static void main(String[] arguments) throws IOException {
        Surroundings surroundings = surroundings();
        Files.writeString(Path.of(PLAN), ExamplePlan.quaysideText());
        Objects.requireNonNull(Main.class); // so that it is in the archive too
        switch (arguments[0]) {
            case "plan" -> {
                Program.run(surroundings, "--help");
                Program.run(surroundings, "check", PLAN);
            }
            case "logs" -> {
                Program.run(surroundings, "simulate", PLAN, "--fault", "reversed:O", "open:R3:M:,", "--log", LOG);
                Program.run(surroundings, "diagnose", LOG);
            }
            default -> {
                Program.run(surroundings, "demo", "--headless");
                Program.run(surroundings, "run", PLAN, "--help");
                draw(surroundings);
            }
        }
    }

    private static Surroundings surroundings() {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return new Surroundings(
                new Console(nowhere, nowhere),
                InputStream.nullInputStream(),
                Path.of(""),
                Surroundings.CLOCK,
                Map.of("LANG", "C.UTF-8"),
                false);
    }

    private static void draw(Surroundings surroundings) throws IOException {
        Setting setting =
                new Setting(Optional.empty(), Optional.empty(), new Common().look(surroundings.environment()), true);
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
}
