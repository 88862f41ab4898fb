package buzzout.cli;

import buzzout.circuit.Fault;
import buzzout.journal.Journal;
import buzzout.line.Flag;
import buzzout.line.Given;
import buzzout.line.Option;
import buzzout.line.Usage;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;

final class SimulateCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Write the log of a simulated board with the given faults, every key pressed once.";

    private static final Option CODES =
            Option.many("--fault", "CODE", "Faults, as `faults PLAN` lists them; none is a good board.");
    private static final Option LOG = Option.needed("--log", "FILE", "Where to write the log; a new file.");
    private static final Option UNIT = Option.of("--unit", "MARK", "The mark of the soldered copy, such as Q-03.");
    private static final Option STARTED = Option.of(
            "--started", "TIME", "When the log says that the session began, such as 2026-11-25T10:14:05+01:00.");
    private static final Flag FREE =
            Flag.of("--free", "Press without being called; say in the end that all have been pressed.");
    private static final Flag READ_THROUGH =
            Flag.of("--read-through", "Press without being called, in a read-through.");

    static final Usage USAGE = Usage.of(
                    "buzzout simulate",
                    IN_SHORT,
                    "The program calls each key, and is told when nothing comes. The same seed gives the same log.")
            .taking(LoadedPlan.PLAN)
            .with(Common.OPTIONS)
            .with(CODES, LOG, UNIT, STARTED, SeedOption.SEED, FREE, READ_THROUGH);

    private final Surroundings surroundings;
    private final Common common;
    private final String file;
    private final List<String> codes;
    private final String log;
    private final Optional<String> unit;
    private final Optional<OffsetDateTime> started;
    private final long seed;
    private final boolean free;
    private final boolean readThrough;

    SimulateCommand(Surroundings surroundings, Given given) throws Misuse {
        this.surroundings = surroundings;
        common = Common.of(given);
        file = given.word(LoadedPlan.PLAN);
        codes = given.values(CODES);
        log = given.value(LOG).orElseThrow();
        unit = given.value(UNIT);
        started = started(given);
        seed = SeedOption.seed(given);
        free = given.has(FREE);
        readThrough = given.has(READ_THROUGH);
    }

    @Override
    public int run() throws Failure, IOException, InterruptedException {
        LoadedPlan loaded = LoadedPlan.from(surroundings, file);
        List<Fault> faults = loaded.faults(codes);
        try (Journal journal =
                Journal.create(surroundings.resolve(log), SessionLogs.header(loaded, started, unit), loaded.plan())) {
            PressThrough.Way way = free
                    ? PressThrough.Way.FREE
                    : readThrough ? PressThrough.Way.READ_THROUGH : PressThrough.Way.ROLL_CALL;
            SimulatedSitting.play(loaded.plan(), faults, seed, way, new Bench(loaded, journal));
            if (!common.quiet()) {
                surroundings
                        .console()
                        .say("Wrote " + log + ": " + loaded.plan().keys().size() + " keys pressed, faults: "
                                + (faults.isEmpty() ? "none" : String.join(" ", codes)) + ".");
            }
        }
        return Status.FINE;
    }

    private static Optional<OffsetDateTime> started(Given given) throws Misuse {
        Optional<String> text = given.value(STARTED);
        try {
            return text.map(OffsetDateTime::parse);
        } catch (DateTimeParseException e) {
            throw Misuse.of(STARTED, "\"" + text.orElse("") + "\" is no time such as 2026-11-25T10:14:05+01:00");
        }
    }
}
