package buzzout.cli;

import buzzout.probe.ProbeEvent;
import buzzout.session.Event;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.util.OptionalLong;

/** When the quiet check is over: once nothing has changed for a while after the probe told its whole state. */
final class QuietCheck {
    /** Long enough for hands to leave the board, short enough not to be waited for. Judgement. */
    static final long QUIET_MILLIS = 1_500;

    /** A joint that comes and goes must not hold the session up for ever. */
    static final long MOST_MILLIS = 10_000;

    private OptionalLong begun = OptionalLong.empty();
    private long changed;

    void after(Session session, Event event) {
        if (session.stage() != Stage.QUIET_CHECK) {
            begun = OptionalLong.empty();
        } else if (event instanceof Event.FromProbe from) {
            if (from.event() instanceof ProbeEvent.WholeState) {
                begun = begun.isPresent() ? begun : OptionalLong.of(event.atMillis());
                changed = event.atMillis();
            } else if (from.event() instanceof ProbeEvent.LinkLost) {
                begun = OptionalLong.empty();
            } else {
                changed = event.atMillis();
            }
        }
    }

    boolean isOver(long nowMillis) {
        return begun.isPresent()
                && (nowMillis - changed >= QUIET_MILLIS || nowMillis - begun.getAsLong() >= MOST_MILLIS);
    }
}
