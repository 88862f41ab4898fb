package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.ExamplePlan;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What a person may meet on a bad day: a clear sentence, the right status, nothing lost, no terminal spoiled. */
@Timeout(300) // against hanging only
class BadInputIT {
    /** A device that is no probe: it says this over and over, and names its pty first. */
    private static final String CHATTER = """
            import os, pty, sys, time, tty
            host, device = pty.openpty()
            tty.setraw(device)
            print(os.ttyname(device), flush=True)
            noise = b"\\x1b[2J\\x1b[H\\x1b]0;owned\\x07\\x1b[?1049l\\x1b[31mBOO\\xff\\xfe\\x00\\r\\n" + bytes(range(256)) + b"\\n"
            os.set_blocking(host, False)
            while True:
                try:
                    os.write(host, noise)
                except BlockingIOError:
                    pass
                time.sleep(0.02)
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void plan() throws IOException {
        Files.writeString(folder.resolve("plan.toml"), ExamplePlan.quaysideText());
    }

    @Test
    void a_device_that_is_no_probe_is_named_and_cannot_touch_the_terminal() throws Exception {
        Needs.tmux();
        Needs.python();
        Process chatter = new ProcessBuilder("python3", "-c", CHATTER)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try {
            String port = chatter.inputReader(StandardCharsets.US_ASCII).readLine();
            List<String> run = Jar.command("run", "plan.toml", "--port", port, "--log", "log.jsonl");
            try (Tmux tmux = Tmux.running(folder, 80, 24, run)) {
                tmux.await("not understood");
                tmux.await("is not the probe sketch");
                assertTrue(tmux.text().contains("0 of 46 good · 46 untested"), tmux.screen());
                assertTrue(tmux.text().contains("Findings"), tmux.screen());
                tmux.type("q");
                tmux.awaitEnd(3);
            }
        } finally {
            chatter.destroy();
        }
        String log = Files.readString(folder.resolve("log.jsonl"));
        assertTrue(log.contains("\"event\":\"garbled\""), log);
        assertTrue(log.chars().allMatch(each -> each == '\n' || each >= ' '), "a log can be shown in a terminal");
    }

    @Test
    void a_log_cut_off_anywhere_still_gives_what_it_holds() throws Exception {
        Jar.run(folder, "simulate", "plan.toml", "--fault", "reversed:O", "--log", "log.jsonl");
        byte[] whole = Files.readAllBytes(folder.resolve("log.jsonl"));
        String text = new String(whole, StandardCharsets.UTF_8);
        int header = text.indexOf('\n');
        int closed = text.indexOf("\"closed\"", text.indexOf("\"called\",\"key\":\"O\""));
        int pressed = text.indexOf('\n', closed);
        List<String> words = new ArrayList<>(List.of("diagnose", "--json"));
        List<Integer> cuts =
                new ArrayList<>(List.of(0, 1, header - 1, header, header + 1, pressed - 1, pressed, whole.length - 1));
        new Random(46).ints(60, 0, whole.length).forEach(cuts::add);
        for (int cut : cuts) {
            String name = "cut-" + cut + ".jsonl";
            Files.write(folder.resolve(name), Arrays.copyOf(whole, cut));
            words.add(name);
        }
        Jar.Result diagnosis = Jar.run(folder, words.toArray(String[]::new));
        assertEquals(2, diagnosis.status(), diagnosis.err());
        List<String> lines = diagnosis.out().lines().toList();
        assertEquals(cuts.size(), lines.size());
        Set<String> verdicts = new TreeSet<>();
        for (int index = 0; index < lines.size(); index++) {
            int cut = cuts.get(index);
            JsonObject document = JsonParser.parseString(lines.get(index)).getAsJsonObject();
            String verdict = document.get("verdict").getAsString();
            verdicts.add(verdict);
            assertEquals(cut < header, verdict.equals("unreadable"), () -> cut + ": " + document);
            assertEquals(cut >= pressed, verdict.equals("faulty"), () -> cut + ": " + document);
        }
        assertEquals(Set.of("faulty", "unfinished", "unreadable"), verdicts);
    }

    @Test
    void a_malformed_plan_is_told_with_line_and_column_and_status_2() throws Exception {
        String twice = ExamplePlan.quaysideText().replace("\"Q A Z Log\"", "\"Esc A Z Log\"");
        Files.writeString(folder.resolve("twice.toml"), twice);
        Files.writeString(folder.resolve("cut.toml"), ExamplePlan.quaysideText().substring(0, 400));
        for (String command : List.of("check", "run", "netlist")) {
            for (String plan : List.of("twice.toml", "cut.toml")) {
                Jar.Result result = Jar.run(folder, command, plan);
                assertEquals(2, result.status(), result.err());
                assertTrue(result.err().matches("(?s)" + plan + ":\\d+:\\d+: .*\\R"), result.err());
                assertFalse(result.err().contains("Exception"), result.err());
                assertFalse(Files.exists(folder.resolve("sessions")), "no log is begun");
            }
        }
    }

    @Test
    void a_port_that_is_not_there_is_told_with_what_to_try() throws Exception {
        List<String> run = Jar.command("run", "plan.toml", "--port", "/dev/no-such-port", "--log", "log.jsonl");
        try (Spoken spoken = Spoken.running(folder, run)) {
            spoken.await("There is no port /dev/no-such-port");
            spoken.type("quit");
            assertEquals(3, spoken.status());
        }
    }
}
