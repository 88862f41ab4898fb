package buzzout.probe;

import java.util.ArrayList;
import java.util.List;

/**
 * Bytes to lines. Keeps at most one line; after garbage it goes on behind the next line feed, so that damage costs the
 * line it is in, and the one after only where the line feed itself was hit.
 */
final class LineDecoder {
    /** Room for the longest line and a carriage return. */
    private final byte[] line = new byte[Line.MOST_BYTES + 1];

    private int length;
    private boolean skipping;

    /** The lines that end in the first {@code count} of these bytes, in order. Empty lines say nothing. */
    List<Received> take(byte[] bytes, int count) {
        List<Received> received = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            if (bytes[i] == '\n') {
                if (!skipping) {
                    end(received);
                }
                length = 0;
                skipping = false;
            } else if (!skipping) {
                add(bytes[i], received);
            }
        }
        return received;
    }

    private void add(byte next, List<Received> received) {
        boolean full = (length == Line.MOST_BYTES && next != '\r') || length == line.length;
        if (full) {
            skipping = true;
            received.add(new Received.Garbage(Received.Cause.TOO_LONG, Printable.of(line, length)));
        } else {
            line[length++] = next;
        }
    }

    private void end(List<Received> received) {
        if (length > 0 && line[length - 1] == '\r') {
            length--;
        }
        if (length == 0) {
            return;
        }
        received.add(Line.decode(line, length));
    }
}
