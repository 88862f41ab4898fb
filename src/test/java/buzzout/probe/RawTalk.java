package buzzout.probe;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;

/** Commands and answers by the letter, without a conversation. */
final class RawTalk implements AutoCloseable {
    private static final long PATIENCE = 10_000_000;
    private static final long RETRY = 300_000;

    private final Stopwatch time;
    private final ByteLink link;
    private final LineDecoder decoder = new LineDecoder();
    private final Queue<String> answers = new ArrayDeque<>();
    private final byte[] buffer = new byte[512];

    /** Waits until the probe, which may still be starting, has answered all that it heard, and makes it forget. */
    RawTalk(LinkSource source) throws LinkDown {
        time = source.time();
        link = source.open().link();
        settleUp();
        say("forget");
        until("ok forget");
    }

    /** Asks, each time for another answer, until one comes: then no older answer is still on its way. */
    void settleUp() throws LinkDown {
        for (int micros = 1; micros <= PATIENCE / RETRY; micros++) {
            bytes("\n");
            say("settle " + micros);
            String wanted = "ok settle " + micros;
            Optional<String> answer = next(RETRY);
            while (answer.isPresent() && !answer.get().equals(wanted)) {
                answer = next(RETRY);
            }
            if (answer.isPresent()) {
                return;
            }
        }
        throw new AssertionError("no answer");
    }

    void say(String body) throws LinkDown {
        link.write(Line.encode(body));
    }

    void bytes(String bytes) throws LinkDown {
        link.write(bytes.getBytes(StandardCharsets.ISO_8859_1));
    }

    /** The next answer. */
    String answer() throws LinkDown {
        return next(PATIENCE).orElseThrow(() -> new AssertionError("no answer"));
    }

    /** Past all other answers to this one. */
    void until(String wanted) throws LinkDown {
        String answer = answer();
        while (!answer.equals(wanted)) {
            answer = answer();
        }
    }

    /** The next line, if it comes in time. The introduction at a start is passed over: it may come at any time. */
    private Optional<String> next(long patience) throws LinkDown {
        long end = time.micros() + patience;
        while (answers.isEmpty() && time.micros() < end) {
            for (Received received : decoder.take(buffer, link.read(buffer, 100))) {
                if (received instanceof Received.Good line && !line.body().startsWith("iam ")) {
                    answers.add(line.body());
                }
            }
        }
        return Optional.ofNullable(answers.poll());
    }

    @Override
    public void close() {
        link.close();
    }
}
