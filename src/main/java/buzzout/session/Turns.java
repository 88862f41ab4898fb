package buzzout.session;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** How a read-through begins and ends, in a session that is being changed. */
final class Turns {
    private Turns() {}

    /** From here on presses belong to it. */
    static void begin(Draft draft) {
        if (draft.stage == Stage.PRESSING && !draft.isReading()) {
            draft.readThrough = Optional.of(new ReadThrough(draft.presses.size(), Optional.empty()));
            draft.rollCall = Optional.empty();
            draft.called = OptionalInt.empty();
        }
    }

    /** Its presses are lined up with the keys; without a press it never was. */
    static void lineUp(Draft draft, long atMillis) {
        if (!draft.isReading()) {
            return;
        }
        int from = draft.readThrough.orElseThrow().from();
        List<Press> belonging = draft.presses.subList(from, draft.presses.size());
        if (belonging.isEmpty()) {
            draft.readThrough = Optional.empty();
            return;
        }
        List<Press> came = List.copyOf(belonging);
        List<Press> read = LinedUp.presses(draft.before.plan(), came, atMillis);
        draft.presses = draft.presses.first(from).withAll(read);
        draft.readThrough = Optional.of(new ReadThrough(from, Optional.of(came)));
        draft.everyKeyPressed |= read.stream().noneMatch(press -> Coverage.isUnproven(draft.before.plan(), press));
    }

    /** What got lost may be a key's answer: its presses count, but their order no longer does. */
    static void breakOff(Draft draft) {
        draft.readThrough = draft.readThrough.filter(reading -> !reading.isRunning());
    }

    /** Whatever is pressed after a read-through, that can no longer be taken back. */
    static void settle(Draft draft) {
        draft.readThrough = draft.readThrough.filter(ReadThrough::isRunning);
    }

    /** Takes the end back, where nothing was pressed since, or the beginning, where nothing was pressed yet. */
    static boolean takenBack(Draft draft) {
        Optional<ReadThrough> reading = draft.readThrough;
        if (reading.isEmpty()) {
            return false;
        }
        int from = reading.get().from();
        Optional<List<Press>> came = reading.get().came();
        if (came.isPresent()) {
            draft.presses = draft.presses.first(from).withAll(came.get());
            draft.readThrough = Optional.of(new ReadThrough(from, Optional.empty()));
            draft.everyKeyPressed = false;
            return true;
        }
        boolean untouched = from == draft.presses.size() && !draft.everyKeyPressed;
        draft.readThrough = untouched ? Optional.empty() : reading;
        return untouched;
    }
}
