package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
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

    private static final List<String> FAULTS = List.of(
            "reversed:O",
            "open:R3:M:,",
            "jumper-off:R1",
            "lead-off:R2",
            "dead:J",
            "loose:dead:J",
            "held:G",
            "bypassed:Q",
            "wrong-net:K:C8",
            "swapped:C3:C4",
            "bridge:C2:C3:A:S",
            "pin-low:R1");

    @TempDir
    Path folder;

    @Test
    void checking_a_plan_and_diagnosing_a_log_do_without_what_is_dear_the_first_time()
            throws IOException, InterruptedException {
        Needs.java17();
        Files.copy(Path.of("sessions/quayside-46.toml"), folder.resolve("plan.toml"));
        assertEquals(List.of(), dear("check", "plan.toml"));
        for (int number = 0; number < FAULTS.size(); number++) {
            String log = number + ".jsonl";
            Jar.run(folder, "simulate", "plan.toml", "--fault", FAULTS.get(number), "--log", log);
            assertEquals(List.of(), dear("diagnose", log), FAULTS.get(number));
        }
        assertTrue(dear("compare", "0.jsonl", "1.jsonl").contains("java.util.stream.Stream"));
    }

    /** The dear classes that a command loads. */
    private List<String> dear(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(Jar.command(arguments));
        command.add(1, "-Xlog:class+load:file=loaded.txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertTrue(process.waitFor(1, TimeUnit.MINUTES), () -> String.join(" ", command) + " did not end");
        assertTrue(process.exitValue() <= 1, () -> String.join(" ", command) + ": " + process.exitValue());
        return DEAR.matcher(Files.readString(folder.resolve("loaded.txt")))
                .results()
                .map(found -> found.group(1))
                .toList();
    }
}
