package buzzout.cli;

import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.NextCall;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.util.Optional;

/** When a roll call's next key is called: once every key has been let go for a moment. */
final class Calling {
    /** Long enough for a contact to come to rest, short enough not to be waited for. Judgement. */
    static final long PAUSE_MILLIS = 120;

    private long changed;

    void after(Event event) {
        if (event instanceof Event.FromProbe from
                && (from.event() instanceof ProbeEvent.Closed
                        || from.event() instanceof ProbeEvent.Opened
                        || from.event() instanceof ProbeEvent.WholeState)) {
            changed = event.atMillis();
        }
    }

    /** The call that is due now. */
    Optional<Action> due(Session session, long nowMillis) {
        boolean ready = session.stage() == Stage.PRESSING
                && session.linkTrouble().isEmpty()
                && session.called().isEmpty()
                && !session.isKeyDown()
                && nowMillis - changed >= PAUSE_MILLIS;
        return ready
                ? NextCall.of(session).stream()
                        .<Action>mapToObj(Action.Called::new)
                        .findFirst()
                : Optional.empty();
    }
}
