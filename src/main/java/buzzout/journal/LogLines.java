package buzzout.journal;

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
    /** What stands in the place of what is no text, or for itself. */
    private static final char REPLACEMENT = '\uFFFD';

    private final InputStream bytes;
    private final byte[] buffer = new byte[1 << 16];
    /** What of the buffer is still to be looked at. */
    private int from;

    private int to;
    private final ByteArrayOutputStream line = new ByteArrayOutputStream();
    private int number;

    LogLines(InputStream bytes) {
        this.bytes = bytes;
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
        if (!isMore()) {
            return Optional.empty();
        }
        number++;
        long length = 0;
        boolean whole = false;
        while (!whole && isMore()) {
            int end = from;
            while (end < to && buffer[end] != '\n') {
                end++;
            }
            line.write(buffer, from, Math.min(end - from, MOST_BYTES - line.size()));
            length += end - from;
            whole = end < to;
            from = whole ? end + 1 : end;
        }
        if (length > MOST_BYTES) {
            throw new UnusableLine("the line is longer than 1 MiB");
        }
        return Optional.of(new Line(number, decoded(), whole));
    }

    private boolean isMore() throws IOException {
        if (from == to) {
            from = 0;
            to = Math.max(0, bytes.read(buffer));
        }
        return from < to;
    }

    /** The number of the line last read, from 1. */
    int number() {
        return number;
    }

    private String decoded() throws UnusableLine {
        String text = line.toString(StandardCharsets.UTF_8);
        if (text.indexOf(REPLACEMENT) >= 0 && !isText(line.toByteArray())) {
            throw new UnusableLine("the line is not UTF-8 text");
        }
        boolean marked = number == 1 && !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
        return marked ? text.substring(1) : text;
    }

    private static boolean isText(byte[] utf8) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(utf8));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }
}
