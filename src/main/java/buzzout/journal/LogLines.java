package buzzout.journal;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Cuts a file into lines of UTF-8, never holding more than one line of at most {@link #MOST_BYTES} bytes. */
final class LogLines {
    static final int MOST_BYTES = 1 << 20;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final InputStream bytes;
    private final ByteArrayOutputStream line = new ByteArrayOutputStream();
    private int number;

    LogLines(InputStream bytes) {
        this.bytes = new BufferedInputStream(bytes, 1 << 16);
    }

    /**
     * One line.
     *
     * @param text without its line break
     * @param whole whether a line break followed it
     */
    record Line(int number, String text, boolean whole) {}

    /** The next line, or empty at the end of the file. An unusable line is passed by, so that reading can go on. */
    Optional<Line> next() throws IOException, UnusableLine {
        line.reset();
        int read = bytes.read();
        if (read < 0) {
            return Optional.empty();
        }
        number++;
        int length = 0;
        for (; read >= 0 && read != '\n'; read = bytes.read(), length++) {
            if (length < MOST_BYTES) {
                line.write(read);
            }
        }
        if (length > MOST_BYTES) {
            throw new UnusableLine("the line is longer than 1 MiB");
        }
        return Optional.of(new Line(number, decoded(), read == '\n'));
    }

    /** The number of the line last read, from 1. */
    int number() {
        return number;
    }

    private String decoded() throws UnusableLine {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(line.toByteArray()))
                    .toString();
            boolean marked = number == 1 && !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
            return marked ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new UnusableLine("the line is not UTF-8 text");
        }
    }
}
