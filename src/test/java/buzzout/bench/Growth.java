package buzzout.bench;

import buzzout.circuit.Fault;
import buzzout.diagnosis.Campaign;
import buzzout.diagnosis.Engine;
import buzzout.diagnosis.Grids;
import buzzout.diagnosis.Priors;
import buzzout.diagnosis.RollCall;
import buzzout.plan.Controllers;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.screen.DrawnFrames;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.ToDoubleFunction;

/** How memory, updates and frames grow with the board: for each size, and as the exponent of the number of keys. */
final class Growth {
    private static final int KEPT = 4;
    private static final int FRAMES = 200;
    private static final int UPDATES = 45;
    private static final int BOARDS = 8;

    private Growth() {}

    static void measure(List<Row> rows) throws IOException {
        List<Plan> plans = List.of(
                ExamplePlan.quayside(), Grids.keys75(), Grids.plain8x16(), Grids.plain(Controllers.ATMEGA2560, 16, 32));
        add(rows, plans, "memory of a board, evidence and diagnosis", "kB", Growth::kilobytes);
        add(rows, plans, "mean update after a press, one fault, processor time", "ms", Growth::updateMillis);
        add(rows, plans, "frame after a press, 200x60, processor time", "ms", Growth::frameMillis);
    }

    private static void add(
            List<Row> rows, List<Plan> plans, String what, String unit, ToDoubleFunction<Plan> measured) {
        double[] values = new double[0];
        for (int time = 0; time < 2; time++) { // the first warms up
            values = plans.stream().mapToDouble(measured).toArray();
        }
        for (int size = 0; size < values.length; size++) {
            rows.add(Row.of(what + ", " + plans.get(size).keys().size() + " keys", values[size], unit));
        }
        double[] keys = plans.stream().mapToDouble(plan -> plan.keys().size()).toArray();
        rows.add(Row.of(what + ", exponent", exponent(keys, values), ""));
    }

    /** The slope of a straight line through both logarithms, by least squares. */
    private static double exponent(double[] sizes, double[] values) {
        double[] x = Arrays.stream(sizes).map(Math::log).toArray();
        double[] y = Arrays.stream(values).map(Math::log).toArray();
        double meanX = Arrays.stream(x).average().orElseThrow();
        double meanY = Arrays.stream(y).average().orElseThrow();
        double above = 0;
        double below = 0;
        for (int i = 0; i < x.length; i++) {
            above += (x[i] - meanX) * (y[i] - meanY);
            below += (x[i] - meanX) * (x[i] - meanX);
        }
        return above / below;
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
            Arrays.sort(millis);
            return millis[FRAMES / 2];
        } catch (IOException e) {
            throw new IllegalStateException(String.format(Locale.ROOT, "%s: %s", plan.name(), e), e);
        }
    }
}
