package buzzout.cli;

import buzzout.journal.Journal;
import buzzout.session.Action;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "run",
        description = {
            RunCommand.IN_SHORT,
            "Finds the probe by asking every USB port; reconnects after an unplug. The whole session is logged.",
            "Without a terminal it prints one line for each press, and obeys typed words."
        })
final class RunCommand implements Callable<Integer> {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Test the board that is plugged in: quiet check, then press every key in any order.";

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", arity = "0..1", description = "The plan, a TOML file.")
    private Optional<String> file = Optional.empty();

    @Mixin
    ScreenOption screen = new ScreenOption();

    @Mixin
    ProbeOptions probe = new ProbeOptions();

    @Mixin
    SettleOption settle = new SettleOption();

    @Option(names = "--unit", paramLabel = "MARK", description = "The mark of the soldered copy, such as Q-03.")
    private Optional<String> unit = Optional.empty();

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description = "Where to write the log; a new file. Unless given, one under sessions/ named by board, unit"
                    + " and time.")
    private Optional<String> log = Optional.empty();

    @Option(
            names = "--resume",
            paramLabel = "LOG",
            description = "Take a session up again, after a crash or a break, and go on in the same log; its plan is in"
                    + " it, and PLAN, if you name it, must be the same.")
    private Optional<String> resume = Optional.empty();

    @Option(names = "--roll-call", description = "Call one key after another, after the quiet check.")
    private boolean rollCall;

    @Option(
            names = "--read-through",
            description =
                    "Press each key once in reading order, eyes on the board; say when the last has had its turn.")
    private boolean readThrough;

    RunCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Failure, IOException, InterruptedException {
        if (resume.isEmpty() && file.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "Missing required parameter: 'PLAN'");
        }
        if (resume.isPresent() && (unit.isPresent() || log.isPresent())) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--resume goes on in a log that has its name and its unit already: leave out --log and --unit.");
        }
        Optional<LoadedPlan> loaded =
                file.isPresent() ? Optional.of(LoadedPlan.from(surroundings, file.get())) : Optional.empty();
        Canvas canvas = screen.canvas(surroundings);
        if (resume.isPresent()) {
            try (Resumption resumption = Resumption.of(surroundings, resume.get(), loaded)) {
                return hold(new LiveSitting(surroundings, common, canvas, resumption));
            }
        }
        try (Journal journal = SessionLogs.begin(surroundings, loaded.orElseThrow(), unit, log)) {
            return hold(new LiveSitting(surroundings, common, canvas, loaded.orElseThrow(), unit, journal));
        }
    }

    private int hold(LiveSitting sitting) throws Failure, IOException, InterruptedException {
        return sitting.onProbe(
                probe.source(),
                settle.time(),
                readThrough ? List.of(new Action.ReadThroughBegun()) : List.of(),
                rollCall);
    }
}
