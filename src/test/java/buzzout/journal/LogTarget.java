package buzzout.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.fuzz.OneLine;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** Any bytes as a session log; what does not begin as a header stands behind a header with a small plan. */
public final class LogTarget {
    private static final String HEADER =
            "{\"format\":\"buzzout-session\",\"version\":2,\"plan\":\"name=\\\"S\\\"\\ncontroller=\\\"ATmega32U4\\\"\\n"
                    + "spare=\\\"B0\\\"\\n[rows]\\nR1={pin=\\\"D0\\\",keys=\\\"A B\\\"}\\nR2={pin=\\\"D1\\\",keys=\\\"C D\\\"}\\n"
                    + "[columns]\\nC1={pin=\\\"D4\\\",keys=\\\"A C\\\"}\\nC2={pin=\\\"D6\\\",keys=\\\"B D\\\"}\\n\"}\n";

    private LogTarget() {}

    /** Each problem is one harmless line; what could be read replays, and written again reads the same. */
    public static void fuzzerTestOneInput(byte[] input) throws IOException {
        LogFile file = read(input);
        file.problems().forEach(problem -> OneLine.check(problem.toString()));
        if (file.log().isPresent()) {
            SessionLog log = file.log().get();
            log.replayed().evidence();
            EventWriter writer = new EventWriter(log.plan());
            StringBuilder text = new StringBuilder(HeaderLine.write(log.header())).append('\n');
            log.events().forEach(event -> text.append(writer.line(event)).append('\n'));
            text.toString().lines().forEach(OneLine::check);
            LogFile again = JournalReader.read(
                    "q.jsonl", new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.UTF_8)));
            assertEquals(log, again.log().orElseThrow());
        }
    }

    private static LogFile read(byte[] input) throws IOException {
        ByteArrayOutputStream log = new ByteArrayOutputStream();
        if (!isHeader(input)) {
            log.writeBytes(HEADER.getBytes(StandardCharsets.UTF_8));
        }
        log.writeBytes(input);
        return JournalReader.read("q.jsonl", new ByteArrayInputStream(log.toByteArray()));
    }

    private static boolean isHeader(byte[] input) {
        return new String(input, 0, Math.min(input.length, 9), StandardCharsets.ISO_8859_1).startsWith("{\"format");
    }
}
