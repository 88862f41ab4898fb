package buzzout.probe;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Queue;

/** Commands and answers by the letter, without a conversation. */
final class RawTalk implements AutoCloseable {
    private static final int TRIES = 100;

    private final ByteLink link;
    private final LineDecoder decoder = new LineDecoder();
    private final Queue<String> answers = new ArrayDeque<>();
    private final byte[] buffer = new byte[512];

    RawTalk(LinkSource source) throws LinkDown {
        link = source.open().link();
    }

    void say(String body) throws LinkDown {
        link.write(Line.encode(body));
    }

    void bytes(String bytes) throws LinkDown {
        link.write(bytes.getBytes(StandardCharsets.ISO_8859_1));
    }

    /** The next answer. The introduction at a start is passed over: it may come at any time. */
    String answer() throws LinkDown {
        for (int tries = 0; tries < TRIES; tries++) {
            while (!answers.isEmpty()) {
                String answer = answers.remove();
                if (!answer.startsWith("iam ")) {
                    return answer;
                }
            }
            read();
        }
        throw new AssertionError("no answer");
    }

    /** Past all other answers to this one. */
    void until(String wanted) throws LinkDown {
        String answer = answer();
        while (!answer.equals(wanted)) {
            answer = answer();
        }
    }

    void read() throws LinkDown {
        for (Received received : decoder.take(buffer, link.read(buffer, 100))) {
            if (received instanceof Received.Good line) {
                answers.add(line.body());
            }
        }
    }

    @Override
    public void close() {
        link.close();
    }
}
