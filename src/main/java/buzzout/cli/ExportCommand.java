package buzzout.cli;

import buzzout.journal.LogFile;
import buzzout.journal.SessionLog;
import buzzout.line.Given;
import buzzout.line.Option;
import buzzout.line.Usage;
import buzzout.plan.Plan;
import buzzout.report.Outcome;
import buzzout.report.PinTable;
import buzzout.report.PinTableC;
import buzzout.report.PinTableCsv;
import buzzout.report.PinTableJson;
import buzzout.session.OtherPlan;
import java.util.Optional;

final class ExportCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Write the pin table and the place of every key, for the firmware that comes next.";

    private static final Option FORM =
            Option.needed("--as", "csv|json|c", "The form: a table, a document or a C header.");
    private static final Option PROVEN = Option.of(
            "--proven", "LOG", "A session log: what was tested in it, read with this plan, is marked as proven.");
    private static final Option OUTPUT = Option.of("--output", "FILE", "Where to write; standard output unless given.")
            .or("-o");

    static final Usage USAGE = Usage.of("buzzout export", IN_SHORT, "`format pins` describes the three forms.")
            .taking(LoadedPlan.PLAN)
            .with(Common.OPTIONS)
            .with(FORM, PROVEN, OUTPUT, NewFile.FORCE);

    private final Surroundings surroundings;
    private final Common common;
    private final String file;
    private final String form;
    private final Optional<String> proven;
    private final Optional<String> output;
    private final boolean force;

    ExportCommand(Surroundings surroundings, Given given) {
        this.surroundings = surroundings;
        common = Common.of(given);
        file = given.word(LoadedPlan.PLAN);
        form = given.value(FORM).orElseThrow();
        proven = given.value(PROVEN);
        output = given.value(OUTPUT);
        force = given.has(NewFile.FORCE);
    }

    @Override
    public int run() throws Failure {
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
        if (!common.quiet()) {
            surroundings.console().say("Wrote " + output.orElse("") + ": " + table.remark());
        }
    }
}
