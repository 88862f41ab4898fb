package buzzout.bench;

import buzzout.circuit.Fault;
import buzzout.cli.CommandLines;
import buzzout.diagnosis.Campaign;
import buzzout.diagnosis.Engine;
import buzzout.diagnosis.Priors;
import buzzout.diagnosis.RollCall;
import buzzout.journal.JournalReader;
import buzzout.plan.Plan;
import buzzout.plan.PlanReader;
import buzzout.plan.PlanText;
import buzzout.screen.DrawnFrames;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.ToDoubleFunction;

/** How plans, logs, memory, updates and frames grow with the board. */
final class Growth {
    /** So often is what takes milliseconds done before it is measured, and what takes seconds. */
    private static final int WARM = 60;

    private static final int WARM_ENOUGH = 1;

    private static final int KEPT = 4;
    private static final int FRAMES = 200;
    private static final int UPDATES = 45;
    private static final int BOARDS = 8;

    private Growth() {}

    static void measure(List<Row> rows) throws IOException {
        add(rows, "reading a plan, processor time", "ms", WARM, Growth::planMillis);
        try (Folder folder = Folder.make()) {
            for (int board = 0; board < Sizes.BOARDS.size(); board++) {
                writeLog(folder, board);
            }
            add(rows, "parsing a log, processor time", "ms", WARM, plan -> {
                Path log = folder.resolve(log(plan));
                return Processor.millis(() -> JournalReader.read(log));
            });
            add(rows, "diagnose of the same log, processor time", "ms", WARM, plan -> {
                String log = log(plan);
                return Processor.millis(() -> CommandLines.run(folder.path(), "diagnose", log));
            });
        }
        add(rows, "memory of a board, evidence and diagnosis", "kB", WARM_ENOUGH, Growth::kilobytes);
        add(rows, "mean update after a press, one fault, processor time", "ms", WARM_ENOUGH, Growth::updateMillis);
        add(rows, "frame after a press, 200x60, processor time", "ms", WARM_ENOUGH, Growth::frameMillis);
    }

    private static void add(List<Row> rows, String what, String unit, int before, ToDoubleFunction<Plan> measured) {
        double[] values = {};
        for (int time = 0; time <= before; time++) {
            values = Sizes.BOARDS.stream().mapToDouble(measured).toArray();
        }
        Sizes.add(rows, what, unit, values);
    }

    private static String log(Plan plan) {
        return plan.keys().size() + ".jsonl";
    }

    /** A session in which each key of a board with one fault was pressed. */
    private static void writeLog(Folder folder, int board) throws IOException {
        Plan plan = Sizes.BOARDS.get(board);
        Files.writeString(folder.resolve("plan.toml"), PlanText.of(plan, List.of()));
        String fault = Campaign.likelyFaults(new Random(board), plan, Priors.judged(), 1)
                .get(0)
                .code(plan);
        if (CommandLines.run(folder.path(), "simulate", "plan.toml", "--fault", fault, "--log", log(plan)) != 0) {
            throw new IllegalStateException(plan.name() + " with " + fault);
        }
    }

    private static double planMillis(Plan plan) {
        String text = PlanText.of(plan, List.of());
        return Processor.millis(() -> PlanReader.read(text, "plan.toml"));
    }

    private static List<Observation> rollCall(Plan plan, int seed) {
        List<Fault> truth = Campaign.likelyFaults(new Random(seed), plan, Priors.judged(), 1);
        return RollCall.complete(plan, truth).observations();
    }

    private static double kilobytes(Plan plan) {
        List<Object> kept = new ArrayList<>();
        double before = usedKilobytes();
        for (int copy = 0; copy < KEPT; copy++) {
            Evidence evidence = new Evidence(rollCall(plan, copy));
            Engine engine = new Engine(plan);
            kept.addAll(List.of(evidence, engine, engine.weigh(evidence)));
        }
        double after = usedKilobytes();
        if (kept.size() != 3 * KEPT) {
            throw new IllegalStateException("nothing was kept");
        }
        return (after - before) / KEPT;
    }

    private static double usedKilobytes() {
        for (int time = 0; time < 3; time++) {
            System.gc();
        }
        return (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) / 1024.0;
    }

    /** Over the last keys of the roll calls of some boards, the engine going on from press to press as in a session. */
    private static double updateMillis(Plan plan) {
        double millis = 0;
        for (int board = 0; board < BOARDS; board++) {
            List<Observation> observations = rollCall(plan, board);
            int first = observations.size() - UPDATES;
            Engine engine = new Engine(plan);
            engine.weigh(new Evidence(observations.subList(0, first)));
            for (int more = 1; more <= UPDATES; more++) {
                Evidence evidence = new Evidence(observations.subList(0, first + more));
                millis += Processor.millis(() -> engine.weigh(evidence));
            }
        }
        return millis / (BOARDS * UPDATES);
    }

    private static double frameMillis(Plan plan) {
        try {
            DrawnFrames frames = DrawnFrames.of(plan, PtyTerminal.COLUMNS, PtyTerminal.ROWS);
            double[] millis = new double[FRAMES];
            for (int frame = 0; frame < FRAMES; frame++) {
                int key = frame % plan.keys().size();
                millis[frame] = Processor.millis(() -> frames.press(key));
            }
            return Median.of(millis);
        } catch (IOException e) {
            throw new IllegalStateException(String.format(Locale.ROOT, "%s: %s", plan.name(), e), e);
        }
    }
}
