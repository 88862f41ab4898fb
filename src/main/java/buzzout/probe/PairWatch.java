package buzzout.probe;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;

/** Follows what conducts from changes and whole states, and notices when one of them is missing. */
final class PairWatch {
    private final Consumer<ProbeEvent> tell;
    private final Set<Pair> listed = new HashSet<>();
    private Pairs now = Pairs.NONE;
    private int sequence;
    private boolean waiting;
    private boolean damaged;

    PairWatch(Consumer<ProbeEvent> tell) {
        this.tell = tell;
    }

    /** The probe begins to sweep: a whole state comes first, numbers from 1. */
    void begin() {
        now = Pairs.NONE;
        sequence = 0;
        expectWholeState();
    }

    /** Whether a whole state is due. */
    boolean isWaiting() {
        return waiting;
    }

    void expectWholeState() {
        waiting = true;
        damaged = false;
        listed.clear();
    }

    /** A line was not understood: it may have been part of a whole state. */
    void garbled() {
        damaged = true;
    }

    /** Says whether a whole state must be asked for */
    boolean change(ProbeMessage.Change change, long micros) {
        int step = (int) change.sequence() - sequence;
        if (step <= 0) {
            return false;
        }
        boolean missed = missed(step - 1);
        boolean contradicts = now.contains(change.pair()) == change.closed();
        sequence += step;
        now = change.closed() ? now.with(change.pair()) : now.without(change.pair());
        tell.accept(
                change.closed()
                        ? new ProbeEvent.Closed(micros, change.pair())
                        : new ProbeEvent.Opened(micros, change.pair()));
        return !waiting && (missed || contradicts);
    }

    void conducts(Pair pair) {
        listed.add(pair);
    }

    /** Says whether a whole state must be asked for, because this one is not whole */
    boolean full(ProbeMessage.Full full, long micros) {
        if (damaged || listed.size() != full.pairs()) {
            return true;
        }
        missed((int) full.sequence() - sequence);
        sequence = (int) full.sequence();
        now = Pairs.of(listed);
        waiting = false;
        listed.clear();
        tell.accept(new ProbeEvent.WholeState(micros, now));
        return false;
    }

    /** Says whether a whole state must be asked for */
    boolean beat(ProbeMessage.Beat beat) {
        if (waiting) {
            return false;
        }
        int step = (int) beat.sequence() - sequence;
        int stray = Math.abs(beat.pairs() - now.count());
        if (step == 0 && stray == 0) {
            return false;
        }
        missed(Math.max(step, stray));
        sequence = (int) beat.sequence();
        return true;
    }

    void lost(ProbeMessage.Lost lost) {
        int step = (int) lost.sequence() - sequence;
        missed(Math.max(step, lost.changes()));
        sequence = (int) lost.sequence();
        expectWholeState();
    }

    private boolean missed(long changes) {
        if (changes > 0) {
            tell.accept(new ProbeEvent.Lost(changes));
        }
        return changes > 0;
    }
}
