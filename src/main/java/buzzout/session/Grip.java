package buzzout.session;

/**
 * How one key is held during a flex check; microseconds of probe time.
 *
 * @param since when it was pressed
 * @param closedAt when it last closed: then, or when it came back from a dropout
 * @param openedAt when it opened; {@link #CLOSED} while it is closed
 */
public record Grip(long since, long closedAt, long openedAt) {
    static final long CLOSED = -1;

    /** Not held. */
    static final Grip NONE = new Grip(0, 0, 0);

    static Grip from(long micros) {
        return new Grip(micros, micros, CLOSED);
    }

    Grip openAt(long micros) {
        return new Grip(since, closedAt, micros);
    }

    Grip backAt(long micros) {
        return new Grip(since, micros, CLOSED);
    }

    boolean isClosed() {
        return openedAt == CLOSED;
    }

    /** Whether closing now ends a dropout: it had come to rest before it opened, and was not let go meanwhile. */
    boolean isDropout(long micros) {
        boolean soon = micros >= openedAt && micros - openedAt <= FlexCheck.MOST_MICROS;
        return !isClosed() && openedAt - since > Contact.REST_MICROS && soon;
    }

    /** Whether opening now only goes on with the dropout that it has just come back from. */
    boolean chatters(long micros) {
        return closedAt > since && micros >= closedAt && micros - closedAt <= Contact.REST_MICROS;
    }

    /** Whether closing now is only bounce after it opened. */
    boolean bouncesUp(long micros) {
        return !isClosed() && micros >= openedAt && micros - openedAt <= Contact.REST_MICROS && openedAt > 0;
    }

    /** Whether it has been closed from a while before this moment until now. */
    boolean isSteadySince(long micros) {
        return isClosed() && closedAt + Contact.REST_MICROS <= micros;
    }
}
