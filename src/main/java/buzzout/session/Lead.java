package buzzout.session;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Joint;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The flying lead on the spare pin: what it meets at the moment, all its touches, and the joint that the program waits
 * for. Its pairs are no presses.
 *
 * @param idle what conducts with the spare pin although the lead hangs free, such as a pin that is held low
 */
public record Lead(Pairs now, List<Touch> touches, Optional<Joint> called, Pairs idle) {
    static final Lead UNUSED = new Lead(Pairs.NONE, List.of(), Optional.empty(), Pairs.NONE);

    /**
     * A tip that comes back sooner than this only scraped; it takes a hand longer to find another joint. Judgement.
     */
    private static final long SCRAPE_MICROS = 300_000;

    public Lead {
        touches = List.copyOf(touches);
    }

    /** Of these pairs, those with the spare pin. */
    static Pairs of(Plan plan, Pairs pairs) {
        return pairs.where(pair -> isOn(plan, pair));
    }

    static boolean isOn(Plan plan, Pair pair) {
        int spare = plan.sparePinIndex().orElse(-1);
        return pair.low() == spare || pair.reads() == spare;
    }

    /** The quiet check is over: what conducts now does so with the lead hanging free. */
    Lead atRest() {
        return new Lead(Pairs.NONE, touches, called, idle.plus(now));
    }

    Lead closed(long atMillis, long micros, Pair pair, boolean keyDown) {
        if (idle.contains(pair)) {
            return this;
        }
        Optional<Touch> same = last().filter(touch -> belongs(touch, micros, pair));
        Pairs with = now.with(pair);
        if (same.isPresent()) {
            return new Lead(with, replaced(same.get().grown(micros, Pairs.of(pair), keyDown)), called, idle);
        }
        Optional<Joint> asked = keyDown ? Optional.empty() : called;
        Touch begun = new Touch(atMillis, micros, Pairs.NONE, Pairs.NONE, asked);
        return new Lead(
                with, added(begun.grown(micros, Pairs.of(pair), keyDown)), keyDown ? called : Optional.empty(), idle);
    }

    private boolean belongs(Touch touch, long micros, Pair pair) {
        boolean scrapes = micros - touch.lastMicros() <= SCRAPE_MICROS
                && (touch.pairs().contains(pair) || touch.pairs().contains(pair.turned()));
        return !now.isEmpty() || scrapes;
    }

    Lead opened(long micros, Pair pair) {
        if (idle.contains(pair)) {
            return new Lead(now, touches, called, idle.without(pair));
        }
        List<Touch> same = last().map(touch -> replaced(touch.lasting(micros))).orElse(touches);
        return new Lead(now.without(pair), same, called, idle);
    }

    Lead asking(Joint joint) {
        return new Lead(now, touches, Optional.of(joint), idle);
    }

    Lead metNothing(long atMillis, Joint joint) {
        Touch touch = new Touch(atMillis, Long.MIN_VALUE / 2, Pairs.NONE, Pairs.NONE, Optional.of(joint));
        return new Lead(now, added(touch), Optional.empty(), idle);
    }

    Lead linkLost() {
        return new Lead(Pairs.NONE, touches, called, idle);
    }

    /** Without the call that waits; or without the last touch that was asked for, whose joint is asked for again. */
    Lead takenBack() {
        if (called.isPresent()) {
            return new Lead(now, touches, Optional.empty(), idle);
        }
        Optional<Touch> last = lastAnswer();
        List<Touch> left = new ArrayList<>(touches);
        last.ifPresent(left::remove);
        return new Lead(now, left, last.flatMap(Touch::called), idle);
    }

    /** Without the touches of these nets, after a repair. */
    Lead forgetting(Plan plan, java.util.Set<Integer> nets) {
        List<Touch> left = touches.stream()
                .filter(touch -> touch.called().isEmpty()
                        || !nets.contains(touch.called().get().net(plan)))
                .toList();
        return new Lead(now, left, Optional.empty(), idle);
    }

    /** The last touch that was asked for. */
    public Optional<Touch> lastAnswer() {
        return touches.stream().filter(touch -> touch.called().isPresent()).reduce((earlier, later) -> later);
    }

    public Optional<Touch> last() {
        return touches.isEmpty() ? Optional.empty() : Optional.of(touches.get(touches.size() - 1));
    }

    private List<Touch> replaced(Touch last) {
        List<Touch> changed = new ArrayList<>(touches);
        changed.set(changed.size() - 1, last);
        return changed;
    }

    private List<Touch> added(Touch touch) {
        List<Touch> more = new ArrayList<>(touches);
        more.add(touch);
        return more;
    }
}
