package buzzout.session;

import buzzout.circuit.Circuit;
import buzzout.circuit.Pairs;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Combinations of keys that are held together for a moment and then let go. What conducted while all was steady is a
 * combination's answer. One that is as computed counts at once; any other only when it comes twice the same, because a
 * finger may have missed.
 *
 * @param ahead the combinations still to be held, the one that is called first; empty when it is over
 * @param tried those that were held, with their answers
 * @param doubtful what the one that is called answered last, where that was not as computed
 * @param steady the fullest steady answer since nothing was held
 * @param changed when something last changed, probe time
 */
public record AllAtOnce(
        List<Set<Integer>> ahead, List<Tried> tried, Optional<Pairs> doubtful, Pairs steady, long changed) {
    public static final AllAtOnce NONE = new AllAtOnce(List.of(), List.of(), Optional.empty(), Pairs.NONE, 0);

    /** What stands so long was meant: longer than bounce and than fingers need to follow each other up. Judgement. */
    static final long STEADY_MICROS = 100_000;

    /**
     * A combination that was held.
     *
     * @param answer what it closed beyond the quiet check
     */
    public record Tried(Set<Integer> keys, Pairs answer) {
        public Tried {
            keys = Set.copyOf(keys);
        }
    }

    public AllAtOnce {
        ahead = List.copyOf(ahead);
        tried = List.copyOf(tried);
    }

    /** These combinations are called from now on, one after another; none ends it. */
    AllAtOnce calling(List<Set<Integer>> combinations) {
        return new AllAtOnce(combinations, tried, Optional.empty(), Pairs.NONE, changed);
    }

    /** Nothing is held: the link went down. */
    AllAtOnce letGo() {
        return new AllAtOnce(ahead, tried, doubtful, Pairs.NONE, changed);
    }

    public boolean isOn() {
        return !ahead.isEmpty();
    }

    /** The combination that is called now. */
    public Set<Integer> called() {
        return ahead.isEmpty() ? Set.of() : ahead.get(0);
    }

    /** Something changed; {@code before} and {@code after} are what conducted and conducts beyond the quiet check. */
    AllAtOnce changed(Plan plan, Pairs quiet, Pairs before, Pairs after, long micros) {
        boolean stood = micros - changed >= STEADY_MICROS && before.count() >= steady.count();
        AllAtOnce next = new AllAtOnce(ahead, tried, doubtful, stood ? before : steady, micros);
        return after.isEmpty() && !next.steady.isEmpty() ? next.judged(plan, quiet) : next;
    }

    private AllAtOnce judged(Plan plan, Pairs quiet) {
        boolean counts = isAsComputed(plan, quiet, called(), steady) || doubtful.equals(Optional.of(steady));
        if (!counts) {
            return new AllAtOnce(ahead, tried, Optional.of(steady), Pairs.NONE, changed);
        }
        List<Tried> more = new ArrayList<>(tried);
        more.add(new Tried(called(), steady));
        return new AllAtOnce(ahead.subList(1, ahead.size()), more, Optional.empty(), Pairs.NONE, changed);
    }

    /** The last combination is called again. */
    AllAtOnce takenBack() {
        if (tried.isEmpty()) {
            return this;
        }
        List<Set<Integer>> again = new ArrayList<>(ahead);
        again.add(0, tried.get(tried.size() - 1).keys());
        return new AllAtOnce(again, tried.subList(0, tried.size() - 1), Optional.empty(), Pairs.NONE, changed);
    }

    /** What a board without faults answers to these keys held together, beyond its quiet check. */
    public static Pairs computed(Plan plan, Set<Integer> keys) {
        return Circuit.of(plan).read(held(keys)).low();
    }

    /** Whether an answer is what a board without faults, but with this quiet check, would give. */
    public static boolean isAsComputed(Plan plan, Pairs quiet, Set<Integer> keys, Pairs answer) {
        Circuit sound = Circuit.of(plan);
        return answer.plus(quiet).equals(sound.read(held(keys)).low().plus(quiet));
    }

    private static BitSet held(Set<Integer> keys) {
        BitSet held = new BitSet();
        keys.forEach(held::set);
        return held;
    }
}
