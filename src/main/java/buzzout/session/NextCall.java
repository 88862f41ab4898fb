package buzzout.session;

import buzzout.plan.Place;
import buzzout.plan.Plan;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalInt;

/**
 * Which key a roll call calls next: the one whose answer is least certain, and among equals the one nearest to the hand.
 *
 * <p>Every part is {@link #DOUBTED} alike until an answer as planned proves its whole {@linkplain Routes route}. So the
 * first calls go to the far ends of nets, where one press proves a row and a column at once. An answer that is not as
 * planned lays its blame in equal shares on the unproven parts of its route; from then on a key that halves them tells
 * more than one that shares none, or all. How uncertain an answer is, is its entropy (C. Shannon 1948, memory), with the
 * parts taken as failing independently. The hand is where the last called key is.
 *
 * <p>Where rows and columns are made up, the next key in reading order.
 *
 * <p>It knows nothing but the session, so that the same session always calls the same key.
 */
public final class NextCall {
    /** How probable it is that one untested part is bad. Judgement; only its smallness matters. */
    static final double DOUBTED = 0.01;

    /** A key that answered as planned, but of which nobody said that it was the one pressed. Judgement. */
    static final double HARDLY_DOUBTED = 0.001;

    /** Differences in uncertainty below this are rounding. */
    private static final double NOTHING = 1e-9;

    private final Session session;
    private final Plan plan;
    private final Routes routes;
    private final double[] doubt;
    private final OptionalInt hand;

    private NextCall(Session session) {
        this.session = session;
        plan = session.plan();
        routes = new Routes(plan);
        doubt = new double[routes.parts()];
        Arrays.fill(doubt, DOUBTED);
        hand = lastNamed(session.presses());
        prove();
        blame();
    }

    /** The key to call; nothing when no roll call goes on or none of its keys is left. */
    public static OptionalInt of(Session session) {
        if (session.plan().isMadeUp()) {
            return session.toCall().stream().mapToInt(Integer::intValue).min();
        }
        return session.toCall().isEmpty() ? OptionalInt.empty() : OptionalInt.of(new NextCall(session).choice());
    }

    private static OptionalInt lastNamed(List<Press> presses) {
        for (int at = presses.size() - 1; at >= 0; at--) {
            if (presses.get(at).called().isPresent()) {
                return presses.get(at).called();
            }
        }
        return OptionalInt.empty();
    }

    private void prove() {
        for (Press press : session.presses()) {
            press.key().ifPresent(key -> {
                KeyState answer = Coverage.answer(plan, plan.keys().get(key), press);
                boolean conducts = answer == KeyState.GOOD || answer == KeyState.REVERSED || answer == KeyState.TWO_WAY;
                if (conducts && press.called().isPresent()) {
                    routes.of(key).stream().forEach(part -> doubt[part] = 0);
                } else if (conducts) {
                    routes.of(key).stream().filter(routes::isLink).forEach(part -> doubt[part] = 0);
                    doubt[routes.own(key)] = Math.min(doubt[routes.own(key)], HARDLY_DOUBTED);
                }
            });
        }
    }

    private void blame() {
        for (Press press : session.presses()) {
            press.called().ifPresent(key -> {
                if (Coverage.answer(plan, plan.keys().get(key), press) != KeyState.GOOD) {
                    BitSet suspects = new BitSet();
                    routes.of(key).stream().filter(part -> doubt[part] > 0).forEach(suspects::set);
                    double share = 1.0 / Math.max(2, suspects.cardinality());
                    suspects.stream().forEach(part -> doubt[part] = Math.max(doubt[part], share));
                }
            });
        }
    }

    private int choice() {
        int best = -1;
        double most = 0;
        double nearest = 0;
        for (int key : session.toCall()) {
            double uncertainty = uncertainty(key);
            double distance = distance(key);
            boolean better = best < 0
                    || uncertainty > most + NOTHING
                    || (uncertainty > most - NOTHING && distance < nearest - NOTHING);
            if (better) {
                best = key;
                most = uncertainty;
                nearest = distance;
            }
        }
        return best;
    }

    /** The entropy of whether a key answers as planned, in bits. */
    private double uncertainty(int key) {
        double sound =
                routes.of(key).stream().mapToDouble(part -> 1 - doubt[part]).reduce(1, (a, b) -> a * b);
        return bits(sound) + bits(1 - sound);
    }

    private static double bits(double probability) {
        return probability <= 0 ? 0 : -probability * Math.log(probability) / Math.log(2);
    }

    /** Key pitches from the last called key, as the crow flies. */
    private double distance(int key) {
        if (hand.isEmpty()) {
            return 0;
        }
        Place from = plan.keys().get(hand.getAsInt()).place();
        Place to = plan.keys().get(key).place();
        return Math.hypot(from.middle() - to.middle(), from.y() - to.y());
    }
}
