package buzzout.cli;

import buzzout.journal.LogFile;
import buzzout.line.Flag;
import buzzout.line.Given;
import buzzout.line.Operand;
import buzzout.line.Usage;
import buzzout.report.Comparison;
import buzzout.report.ComparisonJson;
import buzzout.report.ComparisonText;
import buzzout.report.Outcome;
import buzzout.report.WeighedLog;
import java.util.Optional;

final class CompareCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Compare two sessions of one unit: what a repair fixed, left and broke.";

    private static final Operand BEFORE = Operand.of("BEFORE", "The log of the session before the repair.");
    private static final Operand AFTER = Operand.of("AFTER", "The log of the session after it.");
    private static final Flag JSON = Flag.of("--json", "One JSON document; `format comparison` describes it.");

    static final Usage USAGE = Usage.of(
                    "buzzout compare", IN_SHORT, "The exit status is that of `diagnose` for the later one.")
            .taking(BEFORE, AFTER)
            .with(Common.OPTIONS)
            .with(JSON);

    private final Surroundings surroundings;
    private final Common common;
    private final String before;
    private final String after;
    private final boolean json;

    CompareCommand(Surroundings surroundings, Given given) {
        this.surroundings = surroundings;
        common = Common.of(given);
        before = given.word(BEFORE);
        after = given.word(AFTER);
        json = given.has(JSON);
    }

    @Override
    public int run() throws Failure {
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
