package buzzout.cli;

import buzzout.journal.JournalReader;
import buzzout.report.DiagnosisJson;
import buzzout.report.PinTable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "format",
        description = "Print the description of a file format, complete enough to read and write such files.")
final class FormatCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(
            paramLabel = "log|diagnosis|pins",
            description = "The session log, the JSON of `diagnose --json`, or what `export` writes.")
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
                            case "pins" -> text(PinTable.class, "PIN-TABLE.md");
                            default ->
                                throw new Failure(
                                        Status.USAGE,
                                        "There is no format \"" + format
                                                + "\"; there are `log`, `diagnosis` and `pins`.");
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
