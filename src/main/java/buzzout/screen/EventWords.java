package buzzout.screen;

import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import java.util.Optional;

/** Events in words; those that make a press have none. */
final class EventWords {
    private EventWords() {}

    static Optional<String> of(ProbeEvent event) {
        if (event instanceof ProbeEvent.Found found) {
            return Optional.of("probe found on " + found.port() + ": "
                    + found.identity().chip() + ", sketch " + found.identity().sketch());
        } else if (event instanceof ProbeEvent.Lost lost) {
            return Optional.of(
                    counted(lost.changes(), "change") + " from the probe lost; it tells its whole state again");
        } else if (event instanceof ProbeEvent.Garbled garbled) {
            return Optional.of(counted(garbled.lines(), "line") + " not understood: " + garbled.sample());
        } else if (event instanceof ProbeEvent.LinkLost lost) {
            return Optional.of("link lost: " + lost.why());
        } else if (event instanceof ProbeEvent.Refused refused) {
            return Optional.of("the probe refused: " + refused.why());
        }
        return Optional.empty();
    }

    static Optional<String> of(Action action) {
        if (action instanceof Action.QuietCheckDone) {
            return Optional.of("quiet check done");
        } else if (action instanceof Action.RollCallBegun) {
            return Optional.of("roll call");
        } else if (action instanceof Action.RollCallLeft) {
            return Optional.of("roll call left");
        } else if (action instanceof Action.AllPressed) {
            return Optional.of("every key has been pressed");
        } else if (action instanceof Action.TakenBack) {
            return Optional.of("the last press or word taken back");
        } else if (action instanceof Action.Repaired repaired) {
            int others = repaired.orAlike().size();
            return Optional.of("repaired: " + repaired.code() + (others == 0 ? "" : ", or what looked alike"));
        } else if (action instanceof Action.FlexBegun) {
            return Optional.of("flex check begun");
        } else if (action instanceof Action.FlexOver) {
            return Optional.of("flex check over");
        } else if (action instanceof Action.CalledTogether called) {
            int count = called.combinations().size();
            return Optional.of(count == 0 ? "all at once over" : "all at once: " + counted(count, "combination"));
        } else if (action instanceof Action.Noted noted) {
            return Optional.of("note: " + noted.text());
        } else if (action instanceof Action.Ended) {
            return Optional.of("session ended");
        }
        return Optional.empty();
    }

    private static String counted(long number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
