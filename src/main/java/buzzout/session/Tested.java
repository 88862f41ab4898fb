package buzzout.session;

import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.Arrays;
import java.util.BitSet;
import java.util.OptionalInt;

/** What the presses of each key came to. */
final class Tested implements Summing.Sum<Press, Tested> {
    private final By by;
    private final boolean madeUp;
    private final KeyState[] latest;
    private final BitSet good;
    private final BitSet silent;
    private final BitSet gaps;

    private Tested(By by, boolean madeUp, KeyState[] latest, BitSet good, BitSet silent, BitSet gaps) {
        this.by = by;
        this.madeUp = madeUp;
        this.latest = latest;
        this.good = good;
        this.silent = silent;
        this.gaps = gaps;
    }

    /** By a plan, and beside what conducts without a press. */
    record By(Plan plan, Pairs quiet) implements Summing<Press, Tested> {
        @Override
        public Tested nothing() {
            KeyState[] untested = new KeyState[plan.keys().size()];
            Arrays.fill(untested, KeyState.UNTESTED);
            return new Tested(this, plan.isMadeUp(), untested, new BitSet(), new BitSet(), new BitSet());
        }
    }

    @Override
    public void take(Press press) {
        if (press.isGap()) {
            press.presumed().ifPresent(gaps::set);
            return;
        }
        if (StuckPins.fallen(by.plan, by.quiet, press.pairs()).isPresent()) {
            return;
        }
        OptionalInt pressed = madeUp ? press.called() : press.key();
        pressed.ifPresent(index -> {
            Key key = by.plan.keys().get(index);
            if (Coverage.proves(by.plan, key, press)) {
                answered(index, Coverage.answer(by.plan, key, press));
            }
        });
    }

    private void answered(int key, KeyState answer) {
        latest[key] = answer;
        if (answer == KeyState.GOOD) {
            good.set(key);
        } else if (answer == KeyState.SILENT) {
            silent.set(key);
        }
    }

    @Override
    public Tested copy() {
        return new Tested(
                by, madeUp, latest.clone(), (BitSet) good.clone(), (BitSet) silent.clone(), (BitSet) gaps.clone());
    }

    /** How a key stands by its presses; one that had its turn and gave nothing is silent. */
    KeyState state(int key, boolean hadItsTurn) {
        if (latest[key] == KeyState.UNTESTED) {
            return hadItsTurn || gaps.get(key) ? KeyState.SILENT : KeyState.UNTESTED;
        }
        return good.get(key) && silent.get(key) ? KeyState.INTERMITTENT : latest[key];
    }
}
