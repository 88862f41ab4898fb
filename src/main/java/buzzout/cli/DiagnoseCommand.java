package buzzout.cli;

import buzzout.diagnosis.Engines;
import buzzout.journal.JournalReader;
import buzzout.journal.KnownPlans;
import buzzout.journal.LogFile;
import buzzout.journal.LogHeader;
import buzzout.journal.LogProblem;
import buzzout.journal.SessionLog;
import buzzout.line.Flag;
import buzzout.line.Given;
import buzzout.line.Operand;
import buzzout.line.Usage;
import buzzout.report.DiagnosisJson;
import buzzout.report.FindingsText;
import buzzout.report.Outcome;
import buzzout.session.Session;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

final class DiagnoseCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "Print the findings of one or many session logs. A log that cannot be read does not stop the others.";

    /** Logs whose findings are held in memory until their turn to be printed comes. */
    private static final int MOST_AHEAD = 64;

    private static final Operand LOGS = Operand.many("LOG", "Session logs.");
    private static final Flag JSON =
            Flag.of("--json", "One JSON document for each log, each on one line; `format diagnosis` describes it.");

    static final Usage USAGE = Usage.of(
                    "buzzout diagnose",
                    IN_SHORT,
                    "The exit status is the worst of all logs: 70 if the program failed on one, 2 if one cannot be read, else 1 if one has findings.")
            .taking(LOGS)
            .with(Common.OPTIONS)
            .with(JSON);

    private final Surroundings surroundings;
    private final KnownPlans plans = new KnownPlans();
    /** Each thread's own. */
    private final ThreadLocal<Engines> engines = ThreadLocal.withInitial(Engines::new);

    private final Common common;
    private final List<String> logs;
    private final boolean json;
    private final Weighing weighing;

    /** Works out what a session comes to. */
    interface Weighing {
        Outcome of(LogHeader header, Session session, Engines engines);
    }

    DiagnoseCommand(Surroundings surroundings, Given given) {
        this(
                surroundings,
                given,
                (header, session, engines) -> Outcome.of(header.unit(), header.started(), session, engines));
    }

    DiagnoseCommand(Surroundings surroundings, Given given, Weighing weighing) {
        this.surroundings = surroundings;
        this.weighing = weighing;
        common = Common.of(given);
        logs = given.words(LOGS);
        json = given.has(JSON);
    }

    @Override
    public int run() throws Failure, InterruptedException {
        List<Found> found = new ArrayList<>();
        for (String name : logs) {
            found.add(new Found(name, surroundings.resolve(name)));
        }
        // A single one needs no pool of threads, which takes time to start.
        return found.size() == 1 ? said(weighed(found.get(0))) : worstOf(found);
    }

    /** As many at once as the machine has processors, told in their order. */
    private int worstOf(List<Found> found) throws InterruptedException {
        ExecutorService pool = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            int worst = Status.FINE;
            Deque<Future<Weighed>> ahead = new ArrayDeque<>();
            for (Found each : found) {
                if (ahead.size() == MOST_AHEAD) {
                    worst = Math.max(worst, said(ahead.remove().get()));
                }
                ahead.add(pool.submit(() -> weighed(each)));
            }
            while (!ahead.isEmpty()) {
                worst = Math.max(worst, said(ahead.remove().get()));
            }
            return worst;
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e);
        } finally {
            pool.shutdownNow();
        }
    }

    /** A log where it lies. */
    private record Found(String name, Path path) {}

    /** What the program cannot cope with in one log is no reason to say nothing of the others. */
    private Weighed weighed(Found found) {
        try {
            Replayed replayed = Replayed.of(found.path, plans);
            Optional<Outcome> outcome = replayed.outcome(weighing, engines.get());
            int status = outcome.map(DiagnoseCommand::status).orElse(Status.USAGE);
            return new Weighed(found.name, replayed.problems, outcome, status);
        } catch (RuntimeException | StackOverflowError e) {
            engines.remove();
            LogProblem problem = new LogProblem(found.name, 0, "nothing can be said of it. " + Program.broke(e));
            return new Weighed(found.name, List.of(problem), Optional.empty(), Status.INTERNAL);
        }
    }

    /** A log without its events, which are let go before its evidence is weighed: those of a day fill a small heap. */
    private record Replayed(List<LogProblem> problems, Optional<LogHeader> header, Optional<Session> session) {
        static Replayed of(Path path, KnownPlans plans) {
            LogFile file = JournalReader.read(path, plans);
            return new Replayed(
                    file.problems(),
                    file.log().map(SessionLog::header),
                    file.log().map(SessionLog::replayed));
        }

        Optional<Outcome> outcome(Weighing weighing, Engines engines) {
            return header.flatMap(from -> session.map(known -> weighing.of(from, known, engines)));
        }
    }

    /** A log and what its evidence comes to, where it could be read. */
    private record Weighed(String name, List<LogProblem> problems, Optional<Outcome> outcome, int status) {}

    /** The exit status for it, once it is said. */
    private int said(Weighed weighed) {
        say(weighed);
        return weighed.status;
    }

    private void say(Weighed weighed) {
        LogReading.sayProblems(surroundings, weighed.problems);
        boolean many = logs.size() > 1;
        if (json) {
            surroundings.console().say(DiagnosisJson.of(weighed.name, weighed.outcome, weighed.problems));
        } else if (weighed.outcome.isPresent()) {
            boolean ascii = common.look(surroundings.environment()).ascii();
            String heading = many ? "Log " + weighed.name + "\n" : "";
            String gap = many && !weighed.name.equals(logs.get(logs.size() - 1)) ? "\n" : "";
            surroundings.console().say(heading + FindingsText.of(weighed.outcome.get(), ascii) + gap);
        }
    }

    static int status(Outcome outcome) {
        return outcome.verdict().isWrong() ? Status.FINDINGS : Status.FINE;
    }
}
