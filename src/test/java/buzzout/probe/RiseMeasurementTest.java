package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import buzzout.circuit.LeadOff;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Against the simulated board, whose lines may be spoiled on their way back. */
class RiseMeasurementTest {
    private final SimulatedBoard board = SimulatedBoard.inSimulatedTime(TestBoard.plan(), List.of(new LeadOff(1)), 1);

    @Test
    void an_older_sketch_is_told_about_plainly() {
        LinkDown down =
                assertThrows(LinkDown.class, () -> measured(body -> body.startsWith("ok rise ") ? "no ? verb" : body));

        assertEquals(
                "The sketch on the probe, simulated, does not measure rise times: flash the one that came with this"
                        + " program.",
                down.why());
    }

    @Test
    void an_answer_that_was_lost_is_asked_for_anew() throws LinkDown {
        RiseMeasurement.Measured good = measured(UnaryOperator.identity());
        int[] lost = {3};

        assertEquals(good, measured(body -> body.startsWith("ok rise 4") && lost[0]-- > 0 ? "" : body));
    }

    @Test
    void a_reset_on_the_way_is_got_over() throws LinkDown {
        RiseMeasurement.Measured good = measured(UnaryOperator.identity());
        int[] resets = {1};

        assertEquals(good, measured(body -> {
            if (body.startsWith("ok rise 4") && resets[0]-- > 0) {
                board.reset();
            }
            return body;
        }));
    }

    @Test
    void silence_is_told_as_such() {
        LinkDown down = assertThrows(LinkDown.class, () -> measured(body -> ""));

        assertEquals(Sentences.noAnswer(SimulatedBoard.PORT, 0), down.why());
    }

    private RiseMeasurement.Measured measured(UnaryOperator<String> wire) throws LinkDown {
        return RiseMeasurement.of(TestBoard.plan(), new LinkSource() {
            @Override
            public Opened open() throws LinkDown {
                Opened opened = board.open();
                return new Opened(opened.port(), new Wire(opened.link(), wire));
            }

            @Override
            public Stopwatch time() {
                return board.time();
            }
        });
    }

    /** What comes back passes through here line by line; an empty body is lost. */
    private static final class Wire implements ByteLink {
        private final ByteLink link;
        private final UnaryOperator<String> wire;
        private final LineDecoder decoder = new LineDecoder();
        private final Queue<byte[]> lines = new ArrayDeque<>();

        Wire(ByteLink link, UnaryOperator<String> wire) {
            this.link = link;
            this.wire = wire;
        }

        @Override
        public int read(byte[] into, int timeoutMillis) throws LinkDown {
            if (lines.isEmpty()) {
                byte[] buffer = new byte[into.length];
                for (Received received : decoder.take(buffer, link.read(buffer, timeoutMillis))) {
                    String body = received instanceof Received.Good line ? wire.apply(line.body()) : "";
                    lines.add(body.isEmpty() ? new byte[0] : Line.encode(body));
                }
            }
            byte[] line = lines.isEmpty() ? new byte[0] : lines.remove();
            System.arraycopy(line, 0, into, 0, line.length);
            return line.length;
        }

        @Override
        public void write(byte[] bytes) throws LinkDown {
            link.write(bytes);
        }

        @Override
        public void close() {
            link.close();
        }
    }
}
