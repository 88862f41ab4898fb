package buzzout.probe;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** How a body travels: {@code body*CRC}, four uppercase hexadecimal digits, line feed. */
final class Line {
    /** The longest line, without its end. */
    static final int MOST_BYTES = 96;

    static final char MARK = '*';

    private static final int CRC_DIGITS = 4;

    /** The longest body. */
    static final int MOST_BODY = MOST_BYTES - 1 - CRC_DIGITS;

    private Line() {}

    /**
     * The bytes of a line.
     *
     * @throws IllegalArgumentException if the body is empty, too long, or holds what a body cannot
     */
    static byte[] encode(String body) {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        if (!isBody(bytes, bytes.length)) {
            throw new IllegalArgumentException("not the body of a line: " + Printable.of(body));
        }
        String line = body + MARK + check(bytes, bytes.length) + "\n";
        return line.getBytes(StandardCharsets.US_ASCII);
    }

    /** The body of a line without its end, or the empty string where the line is not whole. */
    static String decode(byte[] line, int length) {
        int body = length - 1 - CRC_DIGITS;
        if (!isBody(line, body) || line[body] != MARK) {
            return "";
        }
        String crc = new String(line, body + 1, CRC_DIGITS, StandardCharsets.ISO_8859_1);
        return crc.equals(check(line, body)) ? new String(line, 0, body, StandardCharsets.US_ASCII) : "";
    }

    private static boolean isBody(byte[] bytes, int length) {
        if (length < 1 || length > MOST_BODY || bytes[0] == ' ' || bytes[length - 1] == ' ') {
            return false;
        }
        for (int i = 0; i < length; i++) {
            boolean printable = bytes[i] >= 0x20 && bytes[i] <= 0x7E && bytes[i] != MARK;
            if (!printable || (bytes[i] == ' ' && bytes[i + 1] == ' ')) {
                return false;
            }
        }
        return true;
    }

    private static String check(byte[] bytes, int length) {
        return String.format(Locale.ROOT, "%04X", Crc16.of(bytes, length));
    }
}
