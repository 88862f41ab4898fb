package buzzout.cli;

import buzzout.journal.JournalReader;
import buzzout.line.Given;
import buzzout.line.Operand;
import buzzout.line.Usage;
import buzzout.report.BatchJson;
import buzzout.report.ComparisonJson;
import buzzout.report.DiagnosisJson;
import buzzout.report.PinTable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

final class FormatCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "Print the description of a file format, complete enough to read and write such files.";

    private static final Operand NAME = Operand.of(
            "NAME",
            "`log`, the session log; `diagnosis`, `comparison` or `history`, the JSON of `diagnose`, `compare` or"
                    + " `history --json`; `pins`, what `export` writes.");

    static final Usage USAGE = Usage.of("buzzout format", IN_SHORT).taking(NAME).with(Common.OPTIONS);

    private final Surroundings surroundings;
    private final String format;

    FormatCommand(Surroundings surroundings, Given given) {
        this.surroundings = surroundings;
        format = given.word(NAME);
    }

    @Override
    public int run() throws Failure, IOException {
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
