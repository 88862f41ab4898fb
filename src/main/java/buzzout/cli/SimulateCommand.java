package buzzout.cli;

import buzzout.circuit.Fault;
import buzzout.journal.Journal;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "simulate",
        description = {
            SimulateCommand.IN_SHORT,
            "The program calls each key, and is told when nothing comes. The same seed gives the same log."
        })
final class SimulateCommand implements Callable<Integer> {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Write the log of a simulated board with the given faults, every key pressed once.";

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(paramLabel = "PLAN", description = "The plan, a TOML file.")
    private String file = "";

    @Option(
            names = "--fault",
            paramLabel = "CODE",
            arity = "1..*",
            description = "Faults, as `faults PLAN` lists them; none is a good board.")
    private List<String> codes = new ArrayList<>();

    @Option(names = "--log", paramLabel = "FILE", required = true, description = "Where to write the log; a new file.")
    private String log = "";

    @Option(names = "--unit", paramLabel = "MARK", description = "The mark of the soldered copy, such as Q-03.")
    private Optional<String> unit = Optional.empty();

    @Option(
            names = "--started",
            paramLabel = "TIME",
            description = "When the log says that the session began, such as 2026-11-25T10:14:05+01:00.")
    private Optional<OffsetDateTime> started = Optional.empty();

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "How contacts bounce; 1 unless given.")
    private long seed;

    @Option(names = "--free", description = "Press without being called; say in the end that all have been pressed.")
    private boolean free;

    @Option(names = "--read-through", description = "Press without being called, in a read-through.")
    private boolean readThrough;

    SimulateCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Failure, IOException, InterruptedException {
        LoadedPlan loaded = LoadedPlan.from(surroundings, file);
        List<Fault> faults = loaded.faults(codes);
        try (Journal journal =
                Journal.create(surroundings.resolve(log), SessionLogs.header(loaded, started, unit), loaded.plan())) {
            PressThrough.Way way = free
                    ? PressThrough.Way.FREE
                    : readThrough ? PressThrough.Way.READ_THROUGH : PressThrough.Way.ROLL_CALL;
            SimulatedSitting.play(loaded.plan(), faults, seed, way, new Bench(loaded, journal));
            if (!common.quiet) {
                surroundings
                        .console()
                        .say("Wrote " + log + ": " + loaded.plan().keys().size() + " keys pressed, faults: "
                                + (faults.isEmpty() ? "none" : String.join(" ", codes)) + ".");
            }
        }
        return Status.FINE;
    }
}
