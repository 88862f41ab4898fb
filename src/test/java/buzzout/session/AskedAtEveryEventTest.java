package buzzout.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.ProbeEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A session is asked for what it comes to after every event at the bench, and once, at its end, when its log is read. */
class AskedAtEveryEventTest {
    private static final Plan PLAN = Hands.PLAN;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void it_comes_to_the_same(long seed) {
        Random random = new Random(seed);
        Session asked = Session.of(PLAN);
        int taken = 0;
        Hands hands = Hands.afterQuietCheck();
        for (int step = 0; step < 250; step++) {
            act(hands, random);
            for (Event event : hands.events().subList(taken, hands.events().size())) {
                asked = asked.after(event);
                ask(asked);
            }
            taken = hands.events().size();
            if (step % 25 == 24) {
                assertEquals(ask(hands.session()), ask(asked), "seed " + seed + ", after step " + step);
            }
        }
    }

    private static List<Object> ask(Session session) {
        return List.of(session.states(), session.evidence(), session.bounces(), session.toCall());
    }

    private static void act(Hands hands, Random random) {
        Key key = PLAN.keys().get(random.nextInt(PLAN.keys().size()));
        Pair planned = new Pair(key.row(), key.column());
        switch (random.nextInt(14)) {
            case 0 -> hands.say(new Action.TakenBack());
            case 1 -> hands.say(new Action.Called(key.index()));
            case 2 -> hands.say(new Action.NothingCame(key.index()));
            case 3 -> hands.press(planned.turned());
            case 4 -> bounce(hands, planned, random.nextInt(12) * 1_000);
            case 5 -> hands.press(ground(random.nextInt(PLAN.nets().size())));
            case 6 ->
                hands.say(
                        random.nextInt(6) == 0
                                ? new Action.RollCallBegun()
                                : random.nextInt(4) == 0
                                        ? new Action.ReadThroughBegun()
                                        : new Action.ReadThroughEnded());
            case 7 -> {
                hands.close(planned);
                hands.press(PLAN.keys().get(random.nextInt(PLAN.keys().size())).name());
                hands.open(planned);
            }
            case 8 -> plugIn(hands, random);
            case 9 -> flex(hands, planned);
            case 10 -> hands.say(random.nextInt(3) == 0 ? new Action.AllPressed() : new Action.Noted("still there"));
            default -> hands.press(planned);
        }
    }

    private static void flex(Hands hands, Pair held) {
        hands.say(new Action.FlexBegun()).close(held).wait(500).open(held);
        hands.wait(60).close(held).wait(500);
        hands.say(new Action.FlexOver()).open(held).wait(80);
    }

    /** Now and then with other pairs closed than before. */
    private static void plugIn(Hands hands, Random random) {
        if (random.nextInt(4) == 0) {
            hands.say(new Action.Repaired("dead:Q", List.of()));
            hands.hear(new ProbeEvent.WholeState(0, random.nextBoolean() ? Pairs.NONE : Pairs.of(Hands.pair("W"))));
            hands.wait(2_000).say(new Action.QuietCheckDone());
        }
    }

    private static void bounce(Hands hands, Pair pair, int micros) {
        hands.close(pair);
        hands.open(pair);
        hands.wait(micros / 1_000).press(pair);
    }

    private static Pair[] ground(int net) {
        List<Pair> pairs = new ArrayList<>();
        for (int other = 0; other < PLAN.nets().size(); other++) {
            if (other != net) {
                pairs.add(new Pair(other, net));
            }
        }
        return pairs.toArray(Pair[]::new);
    }
}
