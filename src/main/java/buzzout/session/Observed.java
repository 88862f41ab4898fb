package buzzout.session;

import buzzout.circuit.Pairs;
import buzzout.plan.Plan;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** What presses are as observations. */
final class Observed implements Summing.Sum<Press, Observed> {
    private static final long NEVER = Long.MIN_VALUE;

    private final By by;
    private final Map<Observation, Integer> times;
    /** Turns of a read-through at which a key gave nothing or another's answer; they count until they are made good. */
    private final List<Press> doubtful;
    /** When each key last answered as planned outside a read-through. */
    private final long[] good;
    /** What each key closed when it was last pressed alone, else what is planned. */
    private final Pairs[] closed;

    private Observed(By by, Map<Observation, Integer> times, List<Press> doubtful, long[] good, Pairs[] closed) {
        this.by = by;
        this.times = times;
        this.doubtful = doubtful;
        this.good = good;
        this.closed = closed;
    }

    /** By a plan, and beside what conducts without a press. */
    record By(Plan plan, Pairs quiet) implements Summing<Press, Observed> {
        @Override
        public Observed nothing() {
            long[] good = new long[plan.keys().size()];
            Arrays.fill(good, NEVER);
            Pairs[] planned = new Pairs[good.length];
            for (int key = 0; key < planned.length; key++) {
                planned[key] = Pairs.of(Expected.pair(plan, plan.keys().get(key)));
            }
            return new Observed(this, new LinkedHashMap<>(), new ArrayList<>(), good, planned);
        }
    }

    @Override
    public void take(Press press) {
        if (!press.inCompany()) {
            press.presumed().ifPresent(key -> closed[key] = press.pairs());
        }
        boolean asPlanned = press.key().isPresent()
                && Expected.isAllOf(by.plan, by.plan.keys().get(press.key().getAsInt()), press.pairs());
        if (asPlanned && !press.read()) {
            int key = press.key().orElseThrow();
            good[key] = Math.max(good[key], press.atMillis());
        }
        OptionalInt fallen = StuckPins.fallen(by.plan, by.quiet, press.pairs());
        if (fallen.isPresent()) {
            add(times, new Hands.NetFell(fallen.getAsInt()), press);
        } else if (Coverage.isUnproven(by.plan, press)) {
            return;
        } else if (press.read() && !asPlanned) {
            doubtful.add(press);
        } else {
            add(times, hands(press), press);
        }
    }

    private void add(Map<Observation, Integer> to, Hands hands, Press press) {
        to.merge(new Observation(hands, by.quiet.plus(press.pairs())), 1, Integer::sum);
    }

    private static Hands hands(Press press) {
        if (press.called().isPresent()) {
            return new Hands.Meant(press.called().getAsInt());
        }
        return press.read() ? new Hands.Read(press.presumed().orElseThrow()) : new Hands.SomeKey();
    }

    @Override
    public Observed copy() {
        return new Observed(by, new LinkedHashMap<>(times), new ArrayList<>(doubtful), good.clone(), closed.clone());
    }

    /** How often each observation was made. */
    Map<Observation, Integer> times() {
        Map<Observation, Integer> all = new LinkedHashMap<>(times);
        for (Press turn : doubtful) {
            if (isMadeGood(turn)) {
                continue;
            }
            add(all, hands(turn), turn);
            if (!turn.isGap()) {
                // Whether it is that key's or, by a slip, a neighbour's: some key of the board gives it.
                add(all, new Hands.SomeKey(), turn);
            }
        }
        return all;
    }

    /** Whether the key of this turn has answered as planned since: that had been a slip. Where it may have been left out, before does too. */
    private boolean isMadeGood(Press turn) {
        long answered = turn.presumed().isPresent() ? good[turn.presumed().getAsInt()] : NEVER;
        return answered != NEVER && (turn.isGap() || answered > turn.atMillis());
    }

    /** What a key, held, closes by itself. */
    Pairs closedBy(int key) {
        return closed[key];
    }
}
