package buzzout.cli;

import buzzout.journal.LogFile;
import buzzout.report.Comparison;
import buzzout.report.ComparisonJson;
import buzzout.report.ComparisonText;
import buzzout.report.Outcome;
import buzzout.report.WeighedLog;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "compare",
        description = {CompareCommand.IN_SHORT, "The exit status is that of `diagnose` for the later one."})
final class CompareCommand implements Callable<Integer> {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Compare two sessions of one unit: what a repair fixed, left and broke.";

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(index = "0", paramLabel = "BEFORE", description = "The log of the session before the repair.")
    private String before = "";

    @Parameters(index = "1", paramLabel = "AFTER", description = "The log of the session after it.")
    private String after = "";

    @Option(names = "--json", description = "One JSON document; `format comparison` describes it.")
    private boolean json;

    CompareCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Failure {
        Optional<WeighedLog> first = weighed(before);
        Optional<WeighedLog> second = weighed(after);
        if (first.isEmpty() || second.isEmpty()) {
            return Status.USAGE;
        }
        String board = first.get().outcome().plan().name();
        String other = second.get().outcome().plan().name();
        if (!board.equals(other)) {
            throw new Failure(
                    Status.USAGE,
                    before + " is a session of " + board + " and " + after + " one of " + other
                            + "; compare two of the same board.");
        }
        Comparison comparison = Comparison.of(first.get(), second.get());
        boolean ascii = common.look(surroundings.environment()).ascii();
        surroundings.console().say(json ? ComparisonJson.of(comparison) : ComparisonText.of(comparison, ascii));
        return DiagnoseCommand.status(second.get().outcome());
    }

    private Optional<WeighedLog> weighed(String name) throws Failure {
        LogFile file = LogReading.read(surroundings, name);
        return file.log().map(log -> new WeighedLog(name, Outcome.of(log)));
    }
}
