package buzzout.cli;

import buzzout.journal.SessionLog;
import buzzout.probe.ProbeEvent;
import buzzout.session.Event;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What there was of a session before this program took it up.
 *
 * @param millis how old the session is now, and
 * @param micros what that is on the probe's count, so that both go on and never back
 */
record Past(List<Event> events, long millis, long micros) {
    static final Past NONE = new Past(List.of(), 0, 0);

    Past {
        events = List.copyOf(events);
    }

    /** The session's age by the clock, where its beginning is known and the clock was not set back. */
    static Past of(SessionLog log, OffsetDateTime now) {
        long lastMillis = 0;
        long lastMicros = 0;
        long millisThen = 0;
        for (Event event : log.events()) {
            lastMillis = Math.max(lastMillis, event.atMillis());
            Optional<Long> micros = event instanceof Event.FromProbe from ? micros(from.event()) : Optional.empty();
            if (micros.isPresent()) {
                lastMicros = micros.get();
                millisThen = event.atMillis();
            }
        }
        long age = log.header()
                .started()
                .map(started -> Duration.between(started, now).toMillis())
                .orElse(0L);
        long millis = Math.max(lastMillis + 1_000, age);
        return new Past(log.events(), millis, lastMicros + (millis - millisThen) * 1_000);
    }

    /** The same event on the session's count of microseconds. */
    ProbeEvent countedOn(ProbeEvent event) {
        if (event instanceof ProbeEvent.Closed closed) {
            return new ProbeEvent.Closed(micros + closed.micros(), closed.pair());
        }
        if (event instanceof ProbeEvent.Opened opened) {
            return new ProbeEvent.Opened(micros + opened.micros(), opened.pair());
        }
        if (event instanceof ProbeEvent.WholeState whole) {
            return new ProbeEvent.WholeState(micros + whole.micros(), whole.pairs());
        }
        return event;
    }

    private static Optional<Long> micros(ProbeEvent event) {
        if (event instanceof ProbeEvent.Closed closed) {
            return Optional.of(closed.micros());
        }
        if (event instanceof ProbeEvent.Opened opened) {
            return Optional.of(opened.micros());
        }
        return event instanceof ProbeEvent.WholeState whole ? Optional.of(whole.micros()) : Optional.empty();
    }
}
