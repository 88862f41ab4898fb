package buzzout.cli;

import buzzout.journal.Journal;
import buzzout.line.Flag;
import buzzout.line.Given;
import buzzout.line.Operand;
import buzzout.line.Option;
import buzzout.line.Usage;
import buzzout.probe.SettleTime;
import buzzout.session.Action;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

final class RunCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Test the board that is plugged in: quiet check, then press every key in any order.";

    private static final Operand PLAN = Operand.optional("PLAN", "The plan, a TOML file.");
    private static final Option UNIT = Option.of("--unit", "MARK", "The mark of the soldered copy, such as Q-03.");
    private static final Option LOG = Option.of(
            "--log",
            "FILE",
            "Where to write the log; a new file. Unless given, one under sessions/ named by board, unit and time.");
    private static final Option RESUME = Option.of(
            "--resume",
            "LOG",
            "Take a session up again, after a crash or a break, and go on in the same log; its plan is in it, and PLAN,"
                    + " if you name it, must be the same.");
    private static final Flag ROLL_CALL = Flag.of("--roll-call", "Call one key after another, after the quiet check.");
    private static final Flag READ_THROUGH = Flag.of(
            "--read-through",
            "Press each key once in reading order, eyes on the board; say when the last has had its turn.");

    static final Usage USAGE = Usage.of(
                    "buzzout run",
                    IN_SHORT,
                    "Finds the probe by asking every USB port; reconnects after an unplug. The whole session is logged.",
                    "Without a terminal it prints one line for each press, and obeys typed words.")
            .taking(PLAN)
            .with(Common.OPTIONS)
            .with(ProbeOptions.OPTIONS)
            .with(ScreenOption.WINDOW, SettleOption.SETTLE, UNIT, LOG, RESUME, ROLL_CALL, READ_THROUGH);

    private final Surroundings surroundings;
    private final Common common;
    private final Optional<String> file;
    private final ScreenOption screen;
    private final ProbeOptions probe;
    private final SettleTime settle;
    private final Optional<String> unit;
    private final Optional<String> log;
    private final Optional<String> resume;
    private final boolean rollCall;
    private final boolean readThrough;

    RunCommand(Surroundings surroundings, Given given) throws Misuse {
        this.surroundings = surroundings;
        common = Common.of(given);
        file = given.optional(PLAN);
        screen = ScreenOption.of(given);
        probe = ProbeOptions.of(given);
        settle = SettleOption.time(given);
        unit = given.value(UNIT);
        log = given.value(LOG);
        resume = given.value(RESUME);
        rollCall = given.has(ROLL_CALL);
        readThrough = given.has(READ_THROUGH);
        if (resume.isEmpty() && file.isEmpty()) {
            throw new Misuse("PLAN is missing.");
        }
        if (resume.isPresent() && (unit.isPresent() || log.isPresent())) {
            throw new Misuse(
                    "--resume goes on in a log that has its name and its unit already: leave out --log and --unit.");
        }
    }

    @Override
    public int run() throws Failure, IOException, InterruptedException {
        Canvas canvas = screen.canvas(surroundings);
        Optional<LoadedPlan> loaded =
                file.isPresent() ? Optional.of(LoadedPlan.from(surroundings, file.get())) : Optional.empty();
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
                probe.source(), settle, readThrough ? List.of(new Action.ReadThroughBegun()) : List.of(), rollCall);
    }
}
