package buzzout.bench;

import buzzout.circuit.Fault;
import buzzout.diagnosis.Campaign;
import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Engine;
import buzzout.diagnosis.Grids;
import buzzout.diagnosis.Priors;
import buzzout.diagnosis.RollCall;
import buzzout.plan.Controllers;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.util.Statistics;

/**
 * How long it takes until a diagnosis is on the screen after one more press, over whole roll calls with the keys in any
 * order. The thorough look that follows where the glance was rough is given up when another press comes, and not measured.
 *
 * <p>Each measured update follows the one before on the same engine, as it does at the bench; when a roll call ends, the
 * next board of eight begins with a new engine, whose first look is not measured.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1, time = 10)
@Measurement(iterations = 1, time = 20)
@Fork(1)
public class LiveUpdate {
    private static final int BOARDS = 8;

    @Param({"46", "75", "512"})
    public int keys;

    @Param({"0", "1", "3", "8"})
    public int faults;

    private Plan plan = ExamplePlan.quayside();
    private Engine engine = new Engine(plan);
    private final List<List<Observation>> boards = new ArrayList<>();
    private int board;
    private int seen;
    private Evidence evidence = Evidence.NONE;

    @Setup(Level.Trial)
    public void solder() {
        plan = switch (keys) {
            case 46 -> ExamplePlan.quayside();
            case 75 -> Grids.keys75();
            default -> Grids.plain(Controllers.ATMEGA2560, 16, 32);
        };
        for (int number = 0; number < BOARDS; number++) {
            Random random = new Random(100L * faults + number);
            List<Fault> truth = Campaign.likelyFaults(random, plan, Priors.judged(), faults);
            List<Observation> observations =
                    new ArrayList<>(RollCall.complete(plan, truth).observations());
            Collections.shuffle(observations.subList(1, observations.size()), random);
            boards.add(observations);
        }
        startOver();
    }

    private void startOver() {
        engine = new Engine(plan);
        seen = 1;
        evidence = new Evidence(boards.get(board).subList(0, seen));
        engine.weigh(evidence);
    }

    @Setup(Level.Invocation)
    public void press() {
        if (seen == boards.get(board).size()) {
            board = (board + 1) % BOARDS;
            startOver();
        }
        if (engine.isRough()) {
            engine.ponder(evidence, () -> false);
        }
        evidence = new Evidence(boards.get(board).subList(0, ++seen));
    }

    @Benchmark
    public Diagnosis glanceAfterOneMorePress() {
        return engine.glance(evidence);
    }

    /** Runs it and prints a table. */
    public static void main(String[] arguments) throws RunnerException {
        Collection<RunResult> results = new Runner(
                        new OptionsBuilder().include(LiveUpdate.class.getName()).build())
                .run();
        Map<String, Statistics> of = new TreeMap<>();
        results.forEach(result -> of.put(
                result.getParams().getParam("keys") + " " + result.getParams().getParam("faults"),
                result.getPrimaryResult().getStatistics()));
        System.out.println();
        System.out.println("keys faults updates  median ms     p99 ms     max ms   median per key, against 46 keys");
        of.entrySet().stream()
                .sorted(Comparator.comparingInt(
                        each -> Integer.parseInt(each.getKey().split(" ", -1)[0])))
                .forEach(each -> {
                    String[] name = each.getKey().split(" ", -1);
                    Statistics times = each.getValue();
                    Statistics least = of.getOrDefault("46 " + name[1], times);
                    double growth =
                            times.getPercentile(50) / Integer.parseInt(name[0]) / (least.getPercentile(50) / 46);
                    System.out.printf(
                            "%4s %6s %7d %10.3f %10.3f %10.3f %10.2f times%n",
                            name[0],
                            name[1],
                            times.getN(),
                            times.getPercentile(50),
                            times.getPercentile(99),
                            times.getMax(),
                            growth);
                });
    }
}
