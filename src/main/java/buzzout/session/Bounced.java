package buzzout.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** How long each key's contacts bounced, and how many presses of all keys fall into each bar of the histogram. */
final class Bounced implements Summing.Sum<Press, Bounced> {
    private final By by;
    private final int[] presses;
    private final int[] over;
    private final long[] longestPressing;
    private final long[] longestLettingGo;
    private final int[] inBar;

    private Bounced(By by, int[] presses, int[] over, long[] longestPressing, long[] longestLettingGo, int[] inBar) {
        this.by = by;
        this.presses = presses;
        this.over = over;
        this.longestPressing = longestPressing;
        this.longestLettingGo = longestLettingGo;
        this.inBar = inBar;
    }

    /**
     * By so many keys.
     *
     * @param ends where the bars end, in microseconds, rising
     */
    record By(int keys, long limitMicros, List<Long> ends) implements Summing<Press, Bounced> {
        @Override
        public Bounced nothing() {
            return new Bounced(
                    this, new int[keys], new int[keys], new long[keys], new long[keys], new int[ends.size()]);
        }
    }

    /** Presses of known keys count, each alone. */
    @Override
    public void take(Press press) {
        if (press.presumed().isEmpty() || press.inCompany()) {
            return;
        }
        int key = press.presumed().getAsInt();
        long pressing = press.contact().bounceMicros();
        long lettingGo = press.contact().releaseBounceMicros();
        long longer = Math.max(pressing, lettingGo);
        presses[key]++;
        over[key] += longer > by.limitMicros ? 1 : 0;
        longestPressing[key] = Math.max(longestPressing[key], pressing);
        longestLettingGo[key] = Math.max(longestLettingGo[key], lettingGo);
        int bar = 0;
        while (longer > by.ends.get(bar)) {
            bar++;
        }
        inBar[bar]++;
    }

    @Override
    public Bounced copy() {
        return new Bounced(
                by, presses.clone(), over.clone(), longestPressing.clone(), longestLettingGo.clone(), inBar.clone());
    }

    /** The keys whose bounce was seen, the longest bounce first. */
    List<Bounces.OfKey> keys() {
        List<Bounces.OfKey> keys = new ArrayList<>();
        for (int key = 0; key < by.keys; key++) {
            if (presses[key] > 0) {
                keys.add(new Bounces.OfKey(key, presses[key], over[key], longestPressing[key], longestLettingGo[key]));
            }
        }
        keys.sort((one, other) -> Long.compare(other.longest(), one.longest()));
        return Collections.unmodifiableList(keys);
    }

    /** How many presses fall into each bar. */
    List<Integer> inBars() {
        List<Integer> bars = new ArrayList<>();
        for (int presses : inBar) {
            bars.add(presses);
        }
        return Collections.unmodifiableList(bars);
    }
}
