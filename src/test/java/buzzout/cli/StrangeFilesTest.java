package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.cli.CommandLineCase.Result;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What somebody else may have put where a log or a plan is looked for: links, pipes, files without end. */
@DisabledOnOs(OS.WINDOWS)
@Timeout(60) // against hanging only
class StrangeFilesTest {
    @TempDir
    Path folder;

    private CommandLineCase line;

    @BeforeEach
    void open() throws IOException {
        line = CommandLineCase.in(folder);
    }

    @Test
    void a_batch_is_shown_beside_links_and_pipes_that_never_end_and_each_is_named() throws Exception {
        Path sessions = Files.createDirectory(folder.resolve("sessions"));
        line.run("simulate", "quayside.toml", "--unit", "Q-02", "--log", "sessions/q.jsonl");
        Files.createSymbolicLink(sessions.resolve("endless.jsonl"), Path.of("/dev/zero"));
        Files.createSymbolicLink(sessions.resolve("loop.jsonl"), Path.of("loop.jsonl"));
        Files.createSymbolicLink(sessions.resolve("nowhere.jsonl"), Path.of("../../none"));
        Files.createSymbolicLink(sessions.resolve("plan.jsonl"), Path.of("../quayside.toml"));
        Files.createDirectory(sessions.resolve("folder.jsonl"));
        assertEquals(
                0,
                new ProcessBuilder("mkfifo", sessions.resolve("pipe.jsonl").toString())
                        .start()
                        .waitFor());

        Result result = line.run("history");

        assertEquals("""
                sessions/endless.jsonl: this is no file but a device or a pipe; copy what it gives into a file
                sessions/folder.jsonl: this is a folder, not a session log
                sessions/loop.jsonl: cannot read this file: Too many levels of symbolic links or unable to access attributes of symbolic link
                sessions/nowhere.jsonl: there is no such file
                sessions/pipe.jsonl: this is no file but a device or a pipe; copy what it gives into a file
                sessions/plan.jsonl:1: the line is not one JSON object; nothing else can be read without the plan in this line
                """, result.err());
        assertTrue(result.out().startsWith("Quayside 46: 1 unit tested, 1 passed"), result.out());
        assertEquals(2, result.status());
        System.out.println("figure: links to nowhere and to a device, a loop, a pipe, a folder among the logs | each"
                + " named, the rest shown | the same");
    }

    @Test
    void a_plan_without_an_end_is_too_large_for_one() throws IOException {
        Files.createSymbolicLink(folder.resolve("endless.toml"), Path.of("/dev/zero"));
        Result result = line.run("check", "endless.toml");
        assertEquals("endless.toml: this file is far too large to be a plan.\n", result.err());
        assertEquals(2, result.status());
    }
}
