package buzzout.session;

import java.util.OptionalLong;

/**
 * When a press's contact moved, in microseconds of probe time, good to one sweep. What follows the change before it
 * within {@link #REST_MICROS} is bounce; a contact that has been still for longer has come to rest.
 *
 * @param closed when it first closed
 * @param rested when it last closed before it came to rest
 * @param letGo when it first opened after that, once it has
 * @param last when it last changed
 */
public record Contact(long closed, long rested, OptionalLong letGo, long last) {
    /** Judgement: four times the longest bounce that J. Ganssle saw in ordinary switches, and shorter than any tap. */
    static final long REST_MICROS = PressTiming.BOUNCE_MICROS;

    static Contact firstClosed(long micros) {
        return new Contact(micros, micros, OptionalLong.empty(), micros);
    }

    Contact closes(long micros) {
        boolean bouncing = letGo.isEmpty() && isBounce(micros);
        return new Contact(closed, bouncing ? micros : rested, letGo, micros);
    }

    Contact opens(long micros) {
        boolean bouncing = isBounce(micros);
        boolean stillComingToRest = letGo.isEmpty() && bouncing;
        boolean stillLettingGo = letGo.isPresent() && bouncing;
        OptionalLong since = stillComingToRest || stillLettingGo ? letGo : OptionalLong.of(micros);
        return new Contact(closed, rested, since, micros);
    }

    /** How long it bounced when it was pressed. */
    public long bounceMicros() {
        return rested - closed;
    }

    /** How long it bounced when it was let go; 0 before that, and where it never came to rest. */
    public long releaseBounceMicros() {
        return letGo.isPresent() ? Math.max(0, last - letGo.getAsLong()) : 0;
    }

    /** A clock that went back was started anew: the probe was plugged in again. */
    private boolean isBounce(long micros) {
        return micros >= last && micros - last <= REST_MICROS;
    }
}
