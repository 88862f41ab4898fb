package buzzout.cli;

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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

final class DiagnoseCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "Print the findings of one or many session logs. A log that cannot be read does not stop the others.";

    /** Logs whose findings are held in memory until their turn to be printed comes. */
    private static final int AT_ONCE = 64;

    private static final Operand LOGS = Operand.many("LOG", "Session logs.");
    private static final Flag JSON =
            Flag.of("--json", "One JSON document for each log, each on one line; `format diagnosis` describes it.");

    static final Usage USAGE = Usage.of(
                    "buzzout diagnose",
                    IN_SHORT,
                    "The exit status is the worst of all logs: 2 if one cannot be read, else 1 if one has findings.")
            .taking(LOGS)
            .with(Common.OPTIONS)
            .with(JSON);

    private final Surroundings surroundings;
    private final KnownPlans plans = new KnownPlans();
    private final Common common;
    private final List<String> logs;
    private final boolean json;

    DiagnoseCommand(Surroundings surroundings, Given given) {
        this.surroundings = surroundings;
        common = Common.of(given);
        logs = given.words(LOGS);
        json = given.has(JSON);
    }

    @Override
    public int run() throws Failure {
        int worst = Status.FINE;
        for (int from = 0; from < logs.size(); from += AT_ONCE) {
            for (Weighed weighed : weighed(logs.subList(from, Math.min(from + AT_ONCE, logs.size())))) {
                say(weighed);
                worst = Math.max(
                        worst, weighed.outcome.map(DiagnoseCommand::status).orElse(Status.USAGE));
            }
        }
        return worst;
    }

    /** A log where it lies. */
    private record Found(String name, Path path) {
        Weighed weighed(KnownPlans plans) {
            Replayed replayed = Replayed.of(path, plans);
            return new Weighed(name, replayed.problems, replayed.outcome());
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

        Optional<Outcome> outcome() {
            return header.flatMap(from -> session.map(known -> Outcome.of(from.unit(), from.started(), known)));
        }
    }

    /** A log and what its evidence comes to, where it could be read. */
    private record Weighed(String name, List<LogProblem> problems, Optional<Outcome> outcome) {}

    /** As many at once as the machine has processors; a single one needs no pool of threads, which takes time to start. */
    private List<Weighed> weighed(List<String> names) throws Failure {
        List<Found> found = new ArrayList<>();
        for (String name : names) {
            found.add(new Found(name, surroundings.resolve(name)));
        }
        return (found.size() > 1 ? found.parallelStream() : found.stream())
                .map(each -> each.weighed(plans))
                .toList();
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
