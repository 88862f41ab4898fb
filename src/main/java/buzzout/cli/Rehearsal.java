package buzzout.cli;

import buzzout.journal.Journal;
import buzzout.plan.ExamplePlan;
import buzzout.probe.SimulatedBoard;
import buzzout.screen.Opening;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
    private static final String SITTING = "sitting.jsonl";

    private static final Common QUIET = new Common(false, false, true);
    private static final int MILLIS_AT_THE_BOARD = 3_000;
    private static final int MOST_MILLIS_TO_END = 30_000;

    private Rehearsal() {}

    /**
     * Rehearses. Its files stay in the folder in which it is started.
     *
     * @param arguments one: {@code plan}, {@code logs} or {@code board}
     * @throws Exception if there is no room for a plan and a log
     */
    public static void main(String[] arguments) throws Exception {
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
                sit(surroundings);
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

    /** A screen that nobody sees, since neither end is a terminal, and nobody hears, until a signal ends it. */
    private static void sit(Surroundings surroundings) throws Exception {
        LoadedPlan loaded = LoadedPlan.quayside();
        SimulatedBoard board = SimulatedBoard.inRealTime(loaded.plan(), List.of(), 1);
        DemoFingers fingers =
                new DemoFingers(loaded.plan(), board, List.of(), PressThrough.Way.TELLING, PressThrough.NONE);
        try (Journal journal = SessionLogs.begin(surroundings, loaded, Optional.empty(), Optional.of(SITTING))) {
            new LiveSitting(
                            surroundings,
                            QUIET,
                            new Canvas.OwnTerminal(Opening.begin(surroundings::now)),
                            loaded,
                            Optional.empty(),
                            journal)
                    .simulated(board, fingers, bench -> {
                        fingers.begin(bench, false);
                        Thread ending = new Thread(Rehearsal::endSoon);
                        ending.setDaemon(true);
                        ending.start();
                    });
        }
    }

    /** In any case: or it would stay for ever. */
    private static void endSoon() {
        try {
            Thread.sleep(MILLIS_AT_THE_BOARD);
            // Built into every shell, while a program of that name may be missing.
            String end = "kill " + ProcessHandle.current().pid();
            new ProcessBuilder("/bin/sh", "-c", end).start();
            Thread.sleep(MOST_MILLIS_TO_END);
        } catch (IOException | InterruptedException e) {
            // What follows ends it all the same.
        }
        Runtime.getRuntime().halt(Status.INTERNAL);
    }
}
