package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.line.Given;
import buzzout.line.Reading;
import buzzout.report.Outcome;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A log that the program itself fails on, as it once did on a tangle of faults. */
class FailingLogTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    Path folder;

    @Test
    void the_others_are_diagnosed_all_the_same() throws Failure, IOException, InterruptedException {
        CommandLineCase line = CommandLineCase.in(folder);
        for (String unit : List.of("Q-01", "Q-02", "Q-03")) {
            line.run("simulate", "quayside.toml", "--fault", "dead:Q", "--unit", unit, "--log", unit + ".jsonl");
        }
        assertEquals(Status.INTERNAL, diagnosed("Q-01.jsonl", "Q-02.jsonl", "Q-03.jsonl"));
        assertTrue(out.toString().startsWith("Log Q-01.jsonl\n"), out.toString());
        assertTrue(out.toString().contains("\n\nLog Q-03.jsonl\n"), out.toString());
        assertTrue(
                err.toString()
                        .startsWith(
                                "Q-02.jsonl: nothing can be said of it. The program failed (IllegalStateException). "
                                        + "Please report it together with "),
                err.toString());
    }

    @Test
    void in_json_it_has_a_document_too() throws Failure, IOException, InterruptedException {
        CommandLineCase line = CommandLineCase.in(folder);
        line.run("simulate", "quayside.toml", "--unit", "Q-02", "--log", "Q-02.jsonl");
        assertEquals(Status.INTERNAL, diagnosed("--json", "Q-02.jsonl"));
        assertTrue(
                out.toString()
                        .contains(
                                "\"log\":\"Q-02.jsonl\",\"verdict\":\"unreadable\",\"problems\":[\"Q-02.jsonl: nothing"),
                out.toString());
    }

    private int diagnosed(String... words) throws Failure, InterruptedException {
        Surroundings surroundings = new Surroundings(
                new Console(new PrintWriter(out), new PrintWriter(err)),
                new ByteArrayInputStream(new byte[0]),
                folder,
                Surroundings.CLOCK,
                Map.of(),
                false);
        Given given = (Given) Reading.of(DiagnoseCommand.USAGE, List.of(words));
        return new DiagnoseCommand(surroundings, given, (header, session, engines) -> {
                    if (header.unit().equals(Optional.of("Q-02"))) {
                        throw new IllegalStateException("made to fail");
                    }
                    return Outcome.of(header.unit(), header.started(), session, engines);
                })
                .run();
    }

    @AfterEach
    void takeTheDetailsAway() throws IOException {
        String said = err.toString();
        int from = said.indexOf("with ") + "with ".length();
        Files.delete(Path.of(said.substring(from, said.indexOf(", which holds"))));
    }
}
