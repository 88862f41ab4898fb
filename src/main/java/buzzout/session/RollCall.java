package buzzout.session;

import buzzout.circuit.Fault;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Keys that the program calls one after another; over when none is left.
 *
 * <p>It says nothing about their order, and keeps no count: a press that is taken back leaves its key to be called again.
 *
 * @param keys all that it calls, as indices into the plan's keys
 * @param sinceMillis when it began, session time; an earlier answer is none to this roll call
 * @param repaired what it is the retest of; empty for a roll call that no repair made necessary
 */
public record RollCall(Set<Integer> keys, long sinceMillis, List<Fault> repaired) {
    public RollCall {
        keys = Set.copyOf(keys);
        repaired = List.copyOf(repaired);
    }

    /** Of the keys that nobody named so far; where all have been, of all once more. */
    static RollCall of(int keyCount, List<Press> presses, long atMillis) {
        Set<Integer> keys = new HashSet<>();
        for (int key = 0; key < keyCount; key++) {
            keys.add(key);
        }
        SortedSet<Integer> unnamed = without(keys, presses, Named.Since.EVER);
        return new RollCall(unnamed.isEmpty() ? keys : unnamed, atMillis, List.of());
    }

    public boolean isRetest() {
        return !repaired.isEmpty();
    }

    /** The keys without an answer. */
    SortedSet<Integer> left(List<Press> presses) {
        return without(keys, presses, new Named.Since(sinceMillis));
    }

    private static SortedSet<Integer> without(Set<Integer> keys, List<Press> presses, Named.Since since) {
        Named named = Growing.of(presses).sum(since);
        SortedSet<Integer> left = new TreeSet<>(keys);
        left.removeIf(named::contains);
        return left;
    }
}
