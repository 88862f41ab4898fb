package buzzout.cli;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Map;

/** Command lines in this process whose output goes nowhere, for benchmarks. */
public final class CommandLines {
    private CommandLines() {}

    /** Runs one in a folder and returns its exit status. */
    public static int run(Path folder, String... arguments) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return Program.run(
                new Surroundings(
                        new Console(nowhere, nowhere),
                        InputStream.nullInputStream(),
                        folder,
                        OffsetDateTime::now,
                        Map.of("LANG", "C.UTF-8"),
                        false),
                arguments);
    }
}
