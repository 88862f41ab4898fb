package buzzout.cli;

import buzzout.journal.JournalReader;
import buzzout.report.DiagnosisJson;
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
    /** What can be described. */
    enum Page {
        LOG("log", JournalReader.class, "SESSION-LOG.md"),
        DIAGNOSIS("diagnosis", DiagnosisJson.class, "DIAGNOSIS-JSON.md");

        private final String word;
        private final Class<?> beside;
        private final String file;

        Page(String word, Class<?> beside, String file) {
            this.word = word;
            this.beside = beside;
            this.file = file;
        }

        String text() throws IOException {
            try (InputStream in = beside.getResourceAsStream(file)) {
                if (in == null) {
                    throw new IllegalStateException(file + " is missing from the program's own jar");
                }
                return new String(in.readAllBytes(), StandardCharsets.UTF_8);
            }
        }

        @Override
        public String toString() {
            return word;
        }
    }

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(paramLabel = "log|diagnosis", description = "The session log, or the JSON of `diagnose --json`.")
    private Page page = Page.LOG;

    FormatCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        surroundings.console().say(page.text());
        return Status.FINE;
    }
}
