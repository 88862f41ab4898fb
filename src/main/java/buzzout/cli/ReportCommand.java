package buzzout.cli;

import buzzout.journal.LogFile;
import buzzout.journal.SessionLog;
import buzzout.report.Outcome;
import buzzout.report.ReportPage;
import buzzout.report.ReportText;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "report",
        description = {
            ReportCommand.IN_SHORT,
            "The page is one HTML file without scripts that fetches nothing. The exit status is that of `diagnose`."
        })
final class ReportCommand implements Callable<Integer> {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "Write one session as a page for somebody who was not there: verdict, picture of the board, findings with"
                    + " their evidence, what was not tested, repairs, cautions.";

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(paramLabel = "LOG", description = "A session log.")
    private String log = "";

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Where to write it, such as report.html.")
    private Optional<String> output = Optional.empty();

    @Option(
            names = "--text",
            description = "The short form as plain text, to paste into a message; printed without -o.")
    private boolean text;

    @Option(names = "--force", description = "Replace FILE where there is one.")
    private boolean force;

    ReportCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Failure {
        if (output.isEmpty() && !text) {
            throw new Failure(
                    Status.USAGE, "Say where to write the page, such as -o report.html; --text prints the short form.");
        }
        LogFile file = LogReading.read(surroundings, log);
        if (file.log().isEmpty()) {
            return Status.USAGE;
        }
        SessionLog session = file.log().get();
        Outcome outcome = Outcome.of(session);
        String written = text
                ? ReportText.of(
                        session,
                        outcome,
                        common.look(surroundings.environment()).ascii(),
                        Version.NUMBER)
                : ReportPage.of(session, outcome, file.problems(), Version.NUMBER);
        if (output.isEmpty()) {
            surroundings.console().say(written);
        } else {
            OutputFile.write(surroundings, output.get(), written, force);
            if (!common.quiet) {
                surroundings.console().say("Wrote " + output.get() + ".");
            }
        }
        return DiagnoseCommand.status(outcome);
    }
}
