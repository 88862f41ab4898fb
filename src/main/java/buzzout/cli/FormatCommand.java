package buzzout.cli;

import buzzout.journal.JournalReader;
import buzzout.report.BatchJson;
import buzzout.report.ComparisonJson;
import buzzout.report.DiagnosisJson;
import buzzout.report.PinTable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "format", description = FormatCommand.IN_SHORT)
final class FormatCommand implements Callable<Integer> {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "Print the description of a file format, complete enough to read and write such files.";

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(
            paramLabel = "NAME",
            description =
                    "`log`, the session log; `diagnosis`, `comparison` or `history`, the JSON of `diagnose`, `compare` or `history --json`; `pins`, what `export` writes.")
    private String format = "";

    FormatCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Failure, IOException {
        surroundings
                .console()
                .say(
                        switch (format) {
                            case "log" -> text(JournalReader.class, "SESSION-LOG.md");
                            case "diagnosis" -> text(DiagnosisJson.class, "DIAGNOSIS-JSON.md");
                            case "comparison" -> text(ComparisonJson.class, "COMPARISON-JSON.md");
                            case "history" -> text(BatchJson.class, "HISTORY-JSON.md");
                            case "pins" -> text(PinTable.class, "PIN-TABLE.md");
                            default ->
                                throw new Failure(
                                        Status.USAGE,
                                        "There is no format \"" + format
                                                + "\"; there are `log`, `diagnosis`, `comparison`, `history` and `pins`.");
                        });
        return Status.FINE;
    }

    private static String text(Class<?> beside, String file) throws IOException {
        try (InputStream in = beside.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException(file + " is missing from the program's own jar");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
