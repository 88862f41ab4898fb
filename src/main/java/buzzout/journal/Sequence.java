package buzzout.journal;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Plan;
import buzzout.probe.ProbeEvent;
import buzzout.session.Event;
import java.util.Optional;

/** What no session can have seen in this order, such as a pair that opens without having closed. */
final class Sequence {
    private final Plan plan;
    private Pairs now = Pairs.NONE;
    /** Whether what conducts now is known; not after changes were lost, until the whole state comes. */
    private boolean known;

    private long millis;

    Sequence(Plan plan) {
        this.plan = plan;
    }

    /** A line could not be used: what it said is not known. */
    void miss() {
        known = false;
    }

    /** What is impossible about one more event. */
    Optional<String> fault(Event event) {
        long before = millis;
        millis = event.atMillis();
        if (millis < before) {
            return Optional.of("the time goes back here; was something cut out of two logs?");
        }
        return event instanceof Event.FromProbe from ? fault(from.event()) : Optional.empty();
    }

    private Optional<String> fault(ProbeEvent event) {
        if (event instanceof ProbeEvent.WholeState whole) {
            now = whole.pairs();
            known = true;
        } else if (event instanceof ProbeEvent.Closed closed) {
            boolean twice = known && now.contains(closed.pair());
            now = now.with(closed.pair());
            return twice ? Optional.of(name(closed.pair()) + " closes, but it was closed already") : Optional.empty();
        } else if (event instanceof ProbeEvent.Opened opened) {
            boolean unclosed = known && !now.contains(opened.pair());
            now = now.without(opened.pair());
            return unclosed ? Optional.of(name(opened.pair()) + " opens, but it was not closed") : Optional.empty();
        } else if (event instanceof ProbeEvent.Lost || event instanceof ProbeEvent.LinkLost) {
            known = false;
        }
        return Optional.empty();
    }

    private String name(Pair pair) {
        return pin(pair.low()) + "→" + pin(pair.reads());
    }

    private String pin(int index) {
        return plan.pins().get(index);
    }
}
