package buzzout.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.journal.JournalReader;
import buzzout.journal.LogFile;
import buzzout.session.KeyState;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Logs that earlier versions wrote say today what they said then. */
class OldLogsTest {
    private static final int LOGS = 7;

    @TestFactory
    Stream<DynamicTest> an_old_log_still_says_the_same() throws IOException {
        List<String> rows = new String(bytes("findings.txt"), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .toList();
        assertEquals(LOGS, rows.size());
        return rows.stream()
                .map(row ->
                        Arrays.stream(row.split("\\|", -1)).map(String::strip).toList())
                .map(row -> DynamicTest.dynamicTest(row.get(0), () -> assertEquals(row, said(row.get(0)))));
    }

    private static List<String> said(String name) throws IOException {
        Outcome outcome;
        try (InputStream in = open(name)) {
            LogFile file = JournalReader.read(name, in);
            assertTrue(file.problems().isEmpty() || name.equals("torn.jsonl"), () -> "" + file.problems());
            outcome = Outcome.of(file.log().orElseThrow());
        }
        String states = Arrays.stream(KeyState.values())
                .filter(state -> outcome.session().count(state) > 0)
                .map(state -> outcome.session().count(state) + " " + state.word())
                .collect(Collectors.joining(", "));
        String codes = outcome.diagnosis().findings().stream()
                .map(finding -> finding.first().fault().code(outcome.plan()))
                .sorted()
                .collect(Collectors.joining(" "));
        return List.of(name, outcome.verdict().word(), states, codes);
    }

    private static byte[] bytes(String name) throws IOException {
        try (InputStream in = open(name)) {
            return in.readAllBytes();
        }
    }

    private static InputStream open(String name) {
        return Objects.requireNonNull(OldLogsTest.class.getResourceAsStream("/buzzout/journal/v1/" + name), name);
    }
}
