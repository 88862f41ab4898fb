package buzzout.cli;

import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.util.OptionalLong;

/**
 * When the quiet check is over: once nothing has changed for a while after the probe told its whole state, or after the
 * person said that a repair is done while it was plugged in.
 */
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
        } else if (event instanceof Event.ByPerson by) {
            if (by.action() instanceof Action.Repaired && session.linkTrouble().isEmpty()) {
                begin(event);
            }
        } else if (event instanceof Event.FromProbe from) {
            if (from.event() instanceof ProbeEvent.WholeState) {
                begin(event);
            } else if (from.event() instanceof ProbeEvent.LinkLost) {
                begun = OptionalLong.empty();
            } else {
                changed = event.atMillis();
            }
        }
    }

    private void begin(Event event) {
        begun = begun.isPresent() ? begun : OptionalLong.of(event.atMillis());
        changed = event.atMillis();
    }

    boolean isOver(long nowMillis) {
        return begun.isPresent()
                && (nowMillis - changed >= QUIET_MILLIS || nowMillis - begun.getAsLong() >= MOST_MILLIS);
    }
}
