package buzzout.cli;

import buzzout.journal.Journal;
import buzzout.session.Action;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "run",
        description = {
            "Test the board that is plugged in: quiet check, then press every key in any order.",
            "Finds the probe by asking every USB port; reconnects after an unplug. The whole session is logged.",
            "Without a terminal it prints one line for each press, and obeys typed words."
        })
final class RunCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(paramLabel = "PLAN", description = "The plan, a TOML file.")
    private String file = "";

    @Mixin
    ScreenOption screen = new ScreenOption();

    @Mixin
    ProbeOptions probe = new ProbeOptions();

    @Option(names = "--unit", paramLabel = "MARK", description = "The mark of the soldered copy, such as Q-03.")
    private Optional<String> unit = Optional.empty();

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description = "Where to write the log; a new file. Unless given, one under sessions/ named by board, unit"
                    + " and time.")
    private Optional<String> log = Optional.empty();

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
        LoadedPlan loaded = LoadedPlan.from(surroundings, file);
        Canvas canvas = screen.canvas(surroundings);
        try (Journal journal = SessionLogs.begin(surroundings, loaded, unit, log)) {
            return new LiveSitting(surroundings, common, canvas, loaded, unit, journal)
                    .onProbe(
                            probe.source(), readThrough ? List.of(new Action.ReadThroughBegun()) : List.of(), rollCall);
        }
    }
}
