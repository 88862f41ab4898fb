package buzzout.cli;

import buzzout.journal.LogFile;
import buzzout.journal.SessionLog;
import buzzout.line.Flag;
import buzzout.line.Given;
import buzzout.line.Operand;
import buzzout.line.Option;
import buzzout.line.Usage;
import buzzout.report.Outcome;
import buzzout.report.ReportPage;
import buzzout.report.ReportText;
import java.util.Optional;

final class ReportCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "Write one session as a page for somebody who was not there: verdict, picture of the board, findings with"
                    + " their evidence, what was not tested, repairs, cautions.";

    private static final Operand LOG = Operand.of("LOG", "A session log.");
    private static final Option OUTPUT = Option.of("--output", "FILE", "Where to write it, such as report.html.")
            .or("-o");
    private static final Flag TEXT =
            Flag.of("--text", "The short form as plain text, to paste into a message; printed without -o.");
    private static final Flag FORCE = Flag.of("--force", "Replace FILE where there is one.");

    static final Usage USAGE = Usage.of(
                    "buzzout report",
                    IN_SHORT,
                    "The page is one HTML file without scripts that fetches nothing. The exit status is that of `diagnose`.")
            .taking(LOG)
            .with(Common.OPTIONS)
            .with(OUTPUT, TEXT, FORCE);

    private final Surroundings surroundings;
    private final Common common;
    private final String log;
    private final Optional<String> output;
    private final boolean text;
    private final boolean force;

    ReportCommand(Surroundings surroundings, Given given) {
        this.surroundings = surroundings;
        common = Common.of(given);
        log = given.word(LOG);
        output = given.value(OUTPUT);
        text = given.has(TEXT);
        force = given.has(FORCE);
    }

    @Override
    public int run() throws Failure {
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
            if (!common.quiet()) {
                surroundings.console().say("Wrote " + output.get() + ".");
            }
        }
        return DiagnoseCommand.status(outcome);
    }
}
