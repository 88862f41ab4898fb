package buzzout.cli;

import buzzout.plan.ExamplePlan;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Runs command lines in this process, in a folder of their own that holds {@code quayside.toml}. */
record CommandLineCase(Path folder) {
    /** What a command line came to. */
    record Result(int status, String out, String err) {}

    static CommandLineCase in(Path folder) throws IOException {
        Files.writeString(folder.resolve("quayside.toml"), ExamplePlan.quaysideText());
        return new CommandLineCase(folder);
    }

    Result run(String... arguments) {
        return runTyping("", arguments);
    }

    Result runTyping(String typed, String... arguments) {
        return runReading(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)), arguments);
    }

    /** What is typed may depend on what has happened by then. */
    Result runReading(InputStream in, String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Console console = new Console(new PrintWriter(out), new PrintWriter(err));
        OffsetDateTime time = OffsetDateTime.parse("2026-11-25T11:14:05+01:00");
        Surroundings surroundings =
                new Surroundings(console, in, folder, () -> time, Map.of("LANG", "en_GB.UTF-8"), false);
        int status = Program.run(surroundings, arguments);
        return new Result(status, plain(out), plain(err));
    }

    List<String> sessions() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("sessions"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private String plain(StringWriter text) {
        return text.toString().replace(folder + "/", "").replace(System.lineSeparator(), "\n");
    }
}
