package buzzout.cli;

import buzzout.diagnosis.Engines;
import buzzout.journal.KnownPlans;
import buzzout.journal.LogFile;
import buzzout.journal.LogProblem;
import buzzout.line.Flag;
import buzzout.line.Given;
import buzzout.line.Operand;
import buzzout.line.Usage;
import buzzout.report.Batch;
import buzzout.report.BatchJson;
import buzzout.report.BatchText;
import buzzout.report.Outcome;
import buzzout.report.PriorsToml;
import buzzout.report.WeighedLog;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

final class HistoryCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "Show a batch from the logs of its sessions: where each unit stands, faults by kind, what failed again.";

    private static final Operand WHERE = Operand.optional(
            "FOLDER|PLAN",
            "A folder of session logs, or a plan, whose sessions are looked for under sessions/. Unless given, all that"
                    + " is under sessions/.");
    private static final Flag PRIORS = Flag.of(
            "--priors",
            "Propose priors instead: TOML for the plan, with 90 % intervals, from judgement and what was found.");
    private static final Flag JSON =
            Flag.of("--json", "One JSON document, priors included; `format history` describes it.");

    static final Usage USAGE = Usage.of(
                    "buzzout history",
                    IN_SHORT,
                    "Units are told apart by their marks (`run --unit MARK`). The exit status is 2 if a log cannot be read, else 0.")
            .taking(WHERE)
            .with(Common.OPTIONS)
            .with(PRIORS, JSON);

    private final Surroundings surroundings;
    private final Common common;
    private final String where;
    private final boolean priors;
    private final boolean json;

    HistoryCommand(Surroundings surroundings, Given given) {
        this.surroundings = surroundings;
        common = Common.of(given);
        where = given.optional(WHERE).orElse(SessionLogs.FOLDER);
        priors = given.has(PRIORS);
        json = given.has(JSON);
    }

    @Override
    public int run() throws Failure {
        boolean plan = Files.isRegularFile(surroundings.resolve(where));
        if (plan && where.endsWith(".jsonl")) {
            throw new Failure(
                    Status.USAGE, where + ": this is a session log, not a plan; name the folder that it is in.");
        }
        String folder = plan ? SessionLogs.FOLDER : where;
        Optional<String> board =
                plan ? Optional.of(LoadedPlan.from(surroundings, where).plan().name()) : Optional.empty();
        List<WeighedLog> logs = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        KnownPlans plans = new KnownPlans();
        Engines engines = new Engines();
        int status = Status.FINE;
        for (String name : logs(folder)) {
            LogFile file = LogReading.read(surroundings, name, plans);
            file.problems().stream().map(LogProblem::toString).forEach(problems::add);
            file.log()
                    .filter(log -> board.isEmpty() || log.plan().name().equals(board.get()))
                    .ifPresent(log -> logs.add(new WeighedLog(name, Outcome.of(log, engines))));
            status = file.log().isEmpty() ? Status.USAGE : status;
        }
        show(folder, Batch.of(logs), problems);
        return status;
    }

    private void show(String folder, List<Batch> batches, List<String> problems) {
        if (json) {
            surroundings.console().say(BatchJson.of(batches, problems));
        } else if (batches.isEmpty()) {
            surroundings.console().say("There is no session in " + folder + " that could be shown.");
        } else {
            boolean ascii = common.look(surroundings.environment()).ascii();
            Function<Batch, String> text = priors ? PriorsToml::of : batch -> BatchText.of(batch, ascii);
            surroundings.console().say(batches.stream().map(text).collect(Collectors.joining("\n")));
        }
    }

    private List<String> logs(String folder) throws Failure {
        Path path = surroundings.resolve(folder);
        if (!Files.isDirectory(path)) {
            throw new Failure(
                    Status.USAGE,
                    folder + ": there is no such folder; `run PLAN --unit MARK` keeps its sessions there.");
        }
        try (Stream<Path> files = Files.list(path)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".jsonl"))
                    .sorted()
                    .map(name -> Path.of(folder, name).toString())
                    .toList();
        } catch (IOException e) {
            throw new Failure(Status.USAGE, folder + ": cannot read this folder: " + e.getMessage());
        }
    }
}
