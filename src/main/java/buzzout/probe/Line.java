package buzzout.probe;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;

/** How a body travels: {@code body*CRC}, four uppercase hexadecimal digits, line feed. */
final class Line {
    /** The longest line, without its end. */
    static final int MOST_BYTES = 96;

    static final char MARK = '*';

    /** Sent first on a link: it ends whatever the other side has half received. */
    static final byte[] END_OF_ANY = {'\n'};

    private static final int CRC_DIGITS = 4;
    private static final HexFormat DIGITS = HexFormat.of().withUpperCase();

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
        if (!isText(bytes, bytes.length) || !hasFields(bytes, bytes.length)) {
            throw new IllegalArgumentException("not the body of a line: " + Printable.of(body));
        }
        String line = body + MARK + check(bytes, bytes.length) + "\n";
        return line.getBytes(StandardCharsets.US_ASCII);
    }

    /** What a line without its end is. */
    static Received decode(byte[] line, int length) {
        int body = length - 1 - CRC_DIGITS;
        if (!isText(line, body) || line[body] != MARK || !crc(line, body).equals(check(line, body))) {
            return new Received.Garbage(Received.Cause.CHECK, Printable.of(line, length));
        }
        return hasFields(line, body)
                ? new Received.Good(new String(line, 0, body, StandardCharsets.US_ASCII))
                : new Received.Garbage(Received.Cause.FIELDS, Printable.of(line, length));
    }

    private static boolean isText(byte[] bytes, int length) {
        boolean text = length >= 1 && length <= MOST_BODY;
        for (int i = 0; i < length && text; i++) {
            text = bytes[i] >= 0x20 && bytes[i] <= 0x7E && bytes[i] != MARK;
        }
        return text;
    }

    /** Fields are parted by one space each, with none at the ends. */
    private static boolean hasFields(byte[] text, int length) {
        byte before = ' ';
        for (int i = 0; i < length; i++) {
            if (before == ' ' && text[i] == ' ') {
                return false;
            }
            before = text[i];
        }
        return before != ' ';
    }

    private static String crc(byte[] line, int body) {
        return new String(line, body + 1, CRC_DIGITS, StandardCharsets.ISO_8859_1);
    }

    private static String check(byte[] bytes, int length) {
        return DIGITS.toHexDigits((short) Crc16.of(bytes, length));
    }
}
