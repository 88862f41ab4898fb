package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.fuzz.OneLine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Any bytes as what a probe sends. */
public final class LinesTarget {
    private static final int MICROS_A_LINE = 10_000;

    private LinesTarget() {}

    /** Cut anywhere it is the same; the talk goes on whatever comes; what it tells is harmless and its times do not fall. */
    public static void fuzzerTestOneInput(byte[] input) {
        List<Received> whole = new LineDecoder().take(input, input.length);
        int cut = input.length == 0 ? 0 : (input[0] & 0xff) % (input.length + 1);
        LineDecoder decoder = new LineDecoder();
        List<Received> inTwo = new ArrayList<>(decoder.take(input, cut));
        inTwo.addAll(decoder.take(Arrays.copyOfRange(input, cut, input.length), input.length - cut));
        assertEquals(whole, inTwo);

        Conversation talk = new Conversation(TestBoard.plan(), SettleTime.USUAL);
        List<ProbeEvent> events = new ArrayList<>(talk.opened("/dev/tty", 0).events());
        long now = 0;
        for (Received received : withChecks(whole)) {
            now += MICROS_A_LINE;
            events.addAll(talk.heard(received, now).events());
            events.addAll(talk.tick(now).events());
        }
        events.forEach(event -> OneLine.check(event.toString()));
    }

    /** A fuzzer hardly ever guesses a check sum: what only lacks that is taken for whole, too. */
    private static List<Received> withChecks(List<Received> lines) {
        return lines.stream()
                .<Received>map(
                        line -> line instanceof Received.Garbage garbage && garbage.cause() == Received.Cause.CHECK
                                ? new Received.Good(garbage.sample().replaceAll("\\*.*", ""))
                                : line)
                .toList();
    }
}
