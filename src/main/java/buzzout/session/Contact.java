package buzzout.session;

/**
 * When a press's contact moved, in microseconds of probe time, good to one sweep. What follows the change before it
 * within {@link #REST_MICROS} is bounce; a contact that has been still for longer has come to rest.
 *
 * @param closed when it first closed
 * @param rested when it last closed before it came to rest
 * @param letGo when it first opened after that, or {@link #NOT_YET}: a bare number, because a day has half a million
 * @param last when it last changed
 */
public record Contact(long closed, long rested, long letGo, long last) {
    static final long NOT_YET = -1;

    /** Judgement: four times the longest bounce that J. Ganssle saw in ordinary switches, and shorter than any tap. */
    static final long REST_MICROS = PressTiming.BOUNCE_MICROS;

    static Contact firstClosed(long micros) {
        return still(micros, micros);
    }

    /** One that closed once, last changed then, and did not bounce. */
    static Contact still(long closed, long last) {
        return new Contact(closed, closed, NOT_YET, last);
    }

    Contact closes(long micros) {
        boolean bouncing = letGo == NOT_YET && isBounce(micros);
        return new Contact(closed, bouncing ? micros : rested, letGo, micros);
    }

    Contact opens(long micros) {
        return new Contact(closed, rested, isBounce(micros) ? letGo : micros, micros);
    }

    /** How long it bounced when it was pressed. */
    public long bounceMicros() {
        return rested - closed;
    }

    /** How long it bounced when it was let go; 0 before that, and where it never came to rest. */
    public long releaseBounceMicros() {
        return letGo == NOT_YET ? 0 : Math.max(0, last - letGo);
    }

    /** A clock that went back was started anew: the probe was plugged in again. */
    private boolean isBounce(long micros) {
        return micros >= last && micros - last <= REST_MICROS;
    }
}
