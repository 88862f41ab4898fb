package buzzout.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.session.Event;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A program that writes a log is killed outright, or can write no more; {@code -Dbuzzout.campaign=full} kills 200. */
@Timeout(900) // against hanging only
class KilledTest {
    private static final int KILLS = "full".equals(System.getProperty("buzzout.campaign")) ? 200 : 15;
    private static final long SEED = 6;

    @TempDir
    Path folder;

    @Test
    void killed_at_any_moment_no_acknowledged_event_is_lost_and_the_same_log_goes_on() throws Exception {
        Path path = folder.resolve("killed.jsonl");
        Random random = new Random(SEED);
        int torn = 0;
        int acknowledged = 0;
        int unacknowledged = 0;
        int next = 0;
        for (int kill = 1; kill <= KILLS; kill++) {
            int last = lastAcknowledged(path, next, random);
            acknowledged += last + 1 - next;
            LogFile file = JournalReader.read(path);
            String which = "kill " + kill + " with seed " + SEED + ": " + file.problems();
            List<Event> events = file.log().orElseThrow().events();
            assertTrue(events.size() > last, which + ", " + events.size() + " events, " + last + " acknowledged");
            for (int at = next; at < events.size(); at++) {
                assertEquals(LogWriting.event(at), events.get(at), which);
            }
            boolean isTorn = !Files.readString(path).endsWith("\n");
            assertEquals(isTorn ? 1 : 0, file.problems().size(), which);
            torn += isTorn ? 1 : 0;
            unacknowledged += events.size() - 1 - last;
            next = events.size();
        }
        System.out.printf(
                "figure: a log's writer killed outright %d times, resumed each time | %d events acknowledged, 0 lost; %d"
                        + " more on the disk, %d last lines torn | 0 lost%n",
                KILLS, acknowledged, unacknowledged, torn);
    }

    private static int lastAcknowledged(Path path, int next, Random random) throws Exception {
        Process writer = start(LogWriting.command(path, next));
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
            int last = next - 1;
            int enough = random.nextInt(40);
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                last = Integer.parseInt(line);
                if (enough-- == 0) {
                    TimeUnit.MICROSECONDS.sleep(random.nextInt(3_000));
                    writer.toHandle().destroyForcibly(); // the process's own would close what it said
                }
            }
            assertTrue(writer.waitFor(10, TimeUnit.SECONDS));
            assertEquals(128 + 9, writer.exitValue(), "it was killed, and did not end by itself");
            return last;
        }
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void where_a_file_may_not_grow_that_is_said_half_lines_are_taken_back_and_it_goes_on_with_room() throws Exception {
        Path path = folder.resolve("full.jsonl");
        List<String> command = new ArrayList<>(List.of("sh", "-c", "ulimit -S -f 64; exec \"$@\"", "sh"));
        command.addAll(LogWriting.command(path, 0));
        Process writer = start(command);
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
            String line = said.readLine();
            int last = -1;
            for (; !line.startsWith(LogWriting.REFUSED); line = said.readLine()) {
                last = Integer.parseInt(line);
            }
            assertTrue(line.contains("files here may not grow any further"), line);
            LogFile full = JournalReader.read(path);
            assertEquals(List.of(), full.problems(), "what did not fit was taken back");
            assertEquals(last + 1, full.log().orElseThrow().events().size());
            room(writer);
            while (line.startsWith(LogWriting.REFUSED)) {
                writer.getOutputStream().write('\n');
                writer.getOutputStream().flush();
                line = said.readLine();
            }
            assertTrue(Integer.parseInt(line) > last, line);
            System.out.println("figure: a log's file that may not grow, then may | " + (last + 1)
                    + " events, 0 lost, half a line taken back | 0 lost, said, goes on");
        } finally {
            writer.destroyForcibly().waitFor();
        }
    }

    /** Lifts the limit on the size of files. */
    private static void room(Process writer) throws IOException, InterruptedException {
        Process lifted = new ProcessBuilder("prlimit", "--pid", String.valueOf(writer.pid()), "--fsize=unlimited:")
                .redirectErrorStream(true)
                .start();
        String said = new String(lifted.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, lifted.waitFor(), said);
    }

    private static Process start(List<String> command) throws IOException {
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }
}
