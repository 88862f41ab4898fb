package buzzout.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.plan.ExamplePlan;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SequenceTest {
    private static final String WHOLE = "{\"event\":\"whole\",\"ms\":10,\"pairs\":{}}";
    private static final String CLOSED = "{\"event\":\"closed\",\"ms\":20,\"low\":\"D0\",\"reads\":\"F1\"}";
    private static final String OPENED = "{\"event\":\"opened\",\"ms\":30,\"low\":\"D0\",\"reads\":\"F1\"}";

    @Test
    void a_pair_that_opens_without_having_closed_is_named_and_counts() throws IOException {
        assertEquals(List.of("log:3: D0→F1 opens, but it was not closed; it counts all the same"), told(WHOLE, OPENED));
    }

    @Test
    void a_pair_that_closes_twice_is_named() throws IOException {
        assertEquals(
                List.of("log:4: D0→F1 closes, but it was closed already; it counts all the same"),
                told(WHOLE, CLOSED, CLOSED));
    }

    @Test
    void a_time_that_goes_back_is_named() throws IOException {
        assertEquals(
                List.of("log:4: the time goes back here; was something cut out of two logs?; it counts all the same"),
                told(WHOLE, OPENED.replace("opened", "closed"), CLOSED.replace("F1", "D4")));
    }

    @Test
    void after_lost_changes_anything_may_open() throws IOException {
        assertEquals(List.of(), told(WHOLE, "{\"event\":\"lost\",\"ms\":15,\"changes\":2}", OPENED));
    }

    private static List<String> told(String... events) throws IOException {
        String text = HeaderLine.write(new LogHeader(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        ExamplePlan.quaysideText()))
                + "\n" + String.join("\n", events) + "\n";
        return JournalReader.read("log", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))
                .problems()
                .stream()
                .map(LogProblem::toString)
                .toList();
    }
}
