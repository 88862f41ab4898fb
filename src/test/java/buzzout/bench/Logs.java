package buzzout.bench;

import buzzout.circuit.Fault;
import buzzout.cli.CommandLines;
import buzzout.diagnosis.Campaign;
import buzzout.diagnosis.Priors;
import buzzout.journal.JournalReader;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** {@code diagnose} over a folder of logs, beside merely parsing the same files; in this process, warm, by turns. */
final class Logs {
    private static final int LOGS = 1_000;
    private static final int BOARDS = 50;
    /** Two threads at work leave the compiler little of two processors. */
    private static final int WARMING = 8;

    private static final int ROUNDS = 3;

    private Logs() {}

    static void measure(List<Row> rows) throws IOException {
        try (Folder folder = Folder.make()) {
            List<String> names = write(folder.path());
            String[] command = Stream.concat(Stream.of("diagnose", "--json"), names.stream())
                    .toArray(String[]::new);
            long events = parse(folder.path(), names);
            double[] parsingEach = new double[ROUNDS];
            double[] diagnosingEach = new double[ROUNDS];
            for (int round = -WARMING; round < ROUNDS; round++) {
                int counted = Math.max(0, round);
                parsingEach[counted] = seconds(() -> parse(folder.path(), names));
                diagnosingEach[counted] = seconds(() -> CommandLines.run(folder.path(), command));
            }
            double parsing = Median.of(parsingEach);
            double diagnosing = Median.of(diagnosingEach);
            rows.add(Row.of("diagnose over " + LOGS + " logs", events / diagnosing, "events/s"));
            rows.add(Row.of(
                    "diagnose over %d logs, beside parsing (%.2f s)".formatted(LOGS, parsing),
                    diagnosing / parsing,
                    "times",
                    2));
        }
    }

    /** Sessions of boards with no fault up to three, each many times under other names. */
    private static List<String> write(Path folder) throws IOException {
        Plan plan = ExamplePlan.quayside();
        Files.writeString(folder.resolve("plan.toml"), ExamplePlan.quaysideText());
        List<String> names = new ArrayList<>();
        for (int board = 0; board < BOARDS; board++) {
            String first = "board-" + board + ".jsonl";
            List<String> words =
                    new ArrayList<>(List.of("simulate", "plan.toml", "--log", first, "--seed", "" + board));
            for (Fault fault : Campaign.likelyFaults(new Random(board), plan, Priors.judged(), board % 4)) {
                words.addAll(List.of("--fault", fault.code(plan)));
            }
            if (CommandLines.run(folder, words.toArray(String[]::new)) != 0) {
                throw new IllegalStateException(words.toString());
            }
            names.add(first);
            for (int copy = 1; copy < LOGS / BOARDS; copy++) {
                String name = "board-" + board + "-" + copy + ".jsonl";
                Files.copy(folder.resolve(first), folder.resolve(name));
                names.add(name);
            }
        }
        return names;
    }

    private static long parse(Path folder, List<String> names) {
        return names.stream()
                .mapToLong(name -> JournalReader.read(folder.resolve(name))
                        .log()
                        .orElseThrow()
                        .events()
                        .size())
                .sum();
    }

    private static double seconds(Runnable work) {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e9;
    }
}
