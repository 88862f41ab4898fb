package buzzout.cli;

import buzzout.journal.LogFile;
import buzzout.report.DiagnosisJson;
import buzzout.report.FindingsText;
import buzzout.report.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "diagnose",
        description = {
            "Print the findings of one or many session logs. A log that cannot be read does not stop the others.",
            "The exit status is the worst of all logs: 2 if one cannot be read, else 1 if one has findings."
        })
final class DiagnoseCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(paramLabel = "LOG", arity = "1..*", description = "Session logs.")
    private List<String> logs = new ArrayList<>();

    @Option(
            names = "--json",
            description = "One JSON document for each log, each on one line; `format diagnosis` describes it.")
    private boolean json;

    DiagnoseCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Failure {
        int worst = Status.FINE;
        boolean ascii = common.look(surroundings.environment()).ascii();
        for (String name : logs) {
            LogFile file = LogReading.read(surroundings, name);
            Optional<Outcome> outcome = file.log().map(Outcome::of);
            if (json) {
                surroundings.console().say(DiagnosisJson.of(name, outcome, file.problems()));
            } else if (outcome.isPresent()) {
                String heading = logs.size() > 1 ? "Log " + name + "\n" : "";
                String gap = logs.size() > 1 && !name.equals(logs.get(logs.size() - 1)) ? "\n" : "";
                surroundings.console().say(heading + FindingsText.of(outcome.get(), ascii) + gap);
            }
            worst = Math.max(worst, outcome.map(DiagnoseCommand::status).orElse(Status.USAGE));
        }
        return worst;
    }

    static int status(Outcome outcome) {
        return outcome.verdict().isWrong() ? Status.FINDINGS : Status.FINE;
    }
}
