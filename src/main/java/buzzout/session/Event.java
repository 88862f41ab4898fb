package buzzout.session;

import buzzout.probe.ProbeEvent;

/** One thing that happened in a session, with milliseconds since the session began. */
public sealed interface Event {
    long atMillis();

    record FromProbe(long atMillis, ProbeEvent event) implements Event {}

    record ByPerson(long atMillis, Action action) implements Event {}
}
