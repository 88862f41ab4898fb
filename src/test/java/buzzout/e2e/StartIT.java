package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a start must not load: the first stream, regular expression or lambda of Java's own takes milliseconds, and each
 * one after it a part of one.
 */
class StartIT {
    private static final Pattern DEAR = Pattern.compile(
            "\\] (java\\.util\\.stream\\.\\S+|java\\.util\\.regex\\.\\S+|java\\.util\\.Formatter|java\\.lang\\.invoke\\.LambdaMetafactory) ");

    @TempDir
    Path folder;

    @Test
    void checking_a_plan_and_diagnosing_a_log_do_without_what_is_dear_the_first_time()
            throws IOException, InterruptedException {
        Files.copy(Path.of("sessions/quayside-46.toml"), folder.resolve("plan.toml"));
        Jar.run(folder, "simulate", "plan.toml", "--fault", "reversed:O", "--log", "log.jsonl");
        assertEquals(List.of(), dear(0, "check", "plan.toml"));
        assertEquals(List.of(), dear(1, "diagnose", "log.jsonl"));
        assertTrue(dear(1, "compare", "log.jsonl", "log.jsonl").contains("java.util.stream.Stream"));
    }

    /** The dear classes that a command loads. */
    private List<String> dear(int status, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(Jar.command(arguments));
        command.add(1, "-Xlog:class+load:file=loaded.txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertEquals(status, process.waitFor(), String.join(" ", command));
        return DEAR.matcher(Files.readString(folder.resolve("loaded.txt")))
                .results()
                .map(found -> found.group(1))
                .toList();
    }
}
