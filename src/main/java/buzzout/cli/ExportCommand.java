package buzzout.cli;

import buzzout.journal.LogFile;
import buzzout.journal.SessionLog;
import buzzout.plan.Plan;
import buzzout.report.Outcome;
import buzzout.report.PinTable;
import buzzout.report.PinTableC;
import buzzout.report.PinTableCsv;
import buzzout.report.PinTableJson;
import buzzout.session.OtherPlan;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "export",
        description = {ExportCommand.IN_SHORT, "`format pins` describes the three forms."})
final class ExportCommand implements Callable<Integer> {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Write the pin table and the place of every key, for the firmware that comes next.";

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(paramLabel = "PLAN", description = "The plan, a TOML file.")
    private String file = "";

    @Option(
            names = "--as",
            paramLabel = "csv|json|c",
            required = true,
            description = "The form: a table, a document or a C header.")
    private String form = "";

    @Option(
            names = "--proven",
            paramLabel = "LOG",
            description = "A session log: what was tested in it, read with this plan, is marked as proven.")
    private Optional<String> proven = Optional.empty();

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Where to write; standard output unless given.")
    private Optional<String> output = Optional.empty();

    @Option(names = "--force", description = "Overwrite the file, if there is one.")
    private boolean force;

    ExportCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Failure {
        if (!form.matches("csv|json|c")) {
            throw new Failure(Status.USAGE, "There is no form \"" + form + "\"; there are `csv`, `json` and `c`.");
        }
        LoadedPlan loaded = LoadedPlan.from(surroundings, file);
        Optional<PinTable.Proof> proof =
                proven.isPresent() ? Optional.of(proof(loaded.plan(), proven.get())) : Optional.empty();
        PinTable table = PinTable.of(loaded.plan(), proof);
        String text = switch (form) {
            case "csv" -> PinTableCsv.of(table);
            case "json" -> PinTableJson.of(table);
            default -> PinTableC.of(table);
        };
        if (output.isPresent()) {
            NewFile.write(surroundings, output.get(), text, force);
            remark(table);
        } else {
            surroundings.console().say(text);
        }
        return Status.FINE;
    }

    private PinTable.Proof proof(Plan plan, String name) throws Failure {
        LogFile read = LogReading.read(surroundings, name);
        if (read.log().isEmpty()) {
            throw new Failure(Status.USAGE, "Without that log nothing is proven, so nothing was written.");
        }
        SessionLog log = read.log().get();
        Optional<String> obstacle = OtherPlan.obstacle(log.plan(), plan);
        if (obstacle.isPresent()) {
            throw new Failure(
                    Status.USAGE, name + ": this session does not prove " + file + ": " + obstacle.get() + ".");
        }
        return new PinTable.Proof(name, Outcome.of(log, plan));
    }

    private void remark(PinTable table) {
        if (!common.quiet) {
            surroundings.console().say("Wrote " + output.orElse("") + ": " + table.remark());
        }
    }
}
