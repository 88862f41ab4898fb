package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.journal.JournalReader;
import buzzout.session.Session;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * Free play on a board of four faults that hide each other, one of them all stripes turned: no explanation is any good,
 * and for some faults of the best that was found, others are far more probable.
 */
class TangleTest {
    @Test
    void a_fault_that_others_replace_is_no_finding_without_a_suspect() throws IOException {
        Session session;
        try (InputStream log = Objects.requireNonNull(TangleTest.class.getResourceAsStream("tangle.jsonl"))) {
            session =
                    JournalReader.read("tangle.jsonl", log).log().orElseThrow().replayed();
        }
        Engine engine = new Engine(session.plan());
        Diagnosis diagnosis = engine.weigh(session.evidence());
        assertTrue(diagnosis.findings().size() > 4, () -> diagnosis.findings().toString());
        assertTrue(
                engine.explanation().size() > diagnosis.findings().size(),
                "every fault of the explanation is held by what stands in for it: this session shows nothing any more");
        diagnosis.findings().forEach(finding -> {
            assertFalse(finding.suspects().isEmpty());
            assertEquals(finding.suspects().get(0), finding.first());
        });
    }
}
