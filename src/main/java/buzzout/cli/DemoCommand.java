package buzzout.cli;

import buzzout.circuit.Fault;
import buzzout.journal.Journal;
import buzzout.line.Flag;
import buzzout.line.Given;
import buzzout.line.Option;
import buzzout.line.Usage;
import buzzout.probe.SimulatedBoard;
import buzzout.report.FindingsText;
import buzzout.report.Outcome;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

final class DemoCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Test a simulated board, Quayside 46 with a few faults; nothing need be plugged in.";

    private static final List<String> FAULTS = List.of("open:R3:M:,", "bridge:C2:C3:A:S", "reversed:O");
    private static final String LEFT_OUT = "G";
    /** The leads make every key of two columns answer as its neighbour: who presses freely sees nothing wrong. */
    private static final List<String> ROLL_CALL_FAULTS = List.of("swapped:C8:C9", "open:R2:K:L");

    private static final Optional<String> UNIT = Optional.of("Q-03");

    private static final Flag HEADLESS =
            Flag.of("--headless", "Play it to the end at once and print the findings as plain text.");
    private static final Option CODES =
            Option.many("--fault", "CODE", "Other faults than its own; `faults` lists them.");
    private static final Flag ROLL_CALL =
            Flag.of("--roll-call", "The program calls one key after another; Enter presses it.");
    private static final Flag READ_THROUGH = Flag.of(
            "--read-through", "Its keys are read through: each at its turn, nothing said, and one left out by a slip.");

    static final Usage USAGE = Usage.of(
                    "buzzout demo",
                    IN_SHORT,
                    "Its keys are pressed one by one, until you press one yourself; with --roll-call they are yours to press.")
            .with(Common.OPTIONS)
            .with(ScreenOption.WINDOW, HEADLESS, CODES, ROLL_CALL, READ_THROUGH, SeedOption.SEED);

    private final Surroundings surroundings;
    private final Common common;
    private final ScreenOption screen;
    private final boolean headless;
    private final List<String> codes;
    private final boolean rollCall;
    private final boolean readThrough;
    private final long seed;

    DemoCommand(Surroundings surroundings, Given given) throws Misuse {
        this.surroundings = surroundings;
        common = Common.of(given);
        screen = ScreenOption.of(given);
        headless = given.has(HEADLESS);
        codes = given.values(CODES);
        rollCall = given.has(ROLL_CALL);
        readThrough = given.has(READ_THROUGH);
        seed = SeedOption.seed(given);
    }

    @Override
    public int run() throws Failure, IOException, InterruptedException {
        Canvas canvas = headless ? new Canvas.None() : screen.canvas(surroundings);
        LoadedPlan loaded = LoadedPlan.quayside();
        List<Fault> faults = loaded.faults(codes.isEmpty() ? rollCall ? ROLL_CALL_FAULTS : FAULTS : codes);
        try (Journal journal = SessionLogs.begin(surroundings, loaded, UNIT, Optional.empty())) {
            if (headless) {
                return played(loaded, faults, journal);
            }
            if (canvas instanceof Canvas.None) {
                surroundings
                        .console()
                        .complain(surroundings.obstacle().orElse("") + " The demo is played without a screen.");
                return played(loaded, faults, journal);
            }
            SimulatedBoard board = SimulatedBoard.inRealTime(loaded.plan(), faults, seed);
            DemoFingers fingers = new DemoFingers(loaded.plan(), board, faults, way(), leftOut(loaded));
            return new LiveSitting(surroundings, common, canvas, loaded, UNIT, journal)
                    .simulated(board, fingers, bench -> fingers.begin(bench, rollCall));
        }
    }

    private PressThrough.Way way() {
        if (rollCall) {
            return PressThrough.Way.ROLL_CALL;
        }
        return readThrough ? PressThrough.Way.READ_THROUGH : PressThrough.Way.TELLING;
    }

    private int leftOut(LoadedPlan loaded) {
        return readThrough ? loaded.plan().key(LEFT_OUT).orElseThrow().index() : PressThrough.NONE;
    }

    private int played(LoadedPlan loaded, List<Fault> faults, Journal journal)
            throws IOException, InterruptedException {
        Bench bench = new Bench(loaded, journal);
        SimulatedSitting.play(loaded.plan(), faults, seed, way(), leftOut(loaded), bench);
        Outcome outcome = Outcome.of(UNIT, Optional.empty(), bench.now().session());
        surroundings
                .console()
                .say(FindingsText.of(
                        outcome, common.look(surroundings.environment()).ascii()));
        surroundings.console().say("\nLog: " + journal.path());
        return DiagnoseCommand.status(outcome);
    }
}
