package buzzout.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.diagnosis.Diagnosis;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.Identity;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Session;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What bounce and holding keys come to, as text and JSON. */
class BounceAndHoldingTest {
    private static final Plan PLAN = ExamplePlan.quayside();

    private Session session = Session.of(PLAN);
    private long micros = 1_000_000;

    BounceAndHoldingTest() {
        hear(new ProbeEvent.Found(new Identity(1, "0.1.0", "ATmega32U4", 26, 16_000_000), "port"));
        hear(new ProbeEvent.WholeState(0, Pairs.NONE));
        say(new Action.QuietCheckDone());
    }

    private void hear(ProbeEvent event) {
        session = session.after(new Event.FromProbe(micros / 1000, event));
    }

    private void say(Action action) {
        session = session.after(new Event.ByPerson(micros / 1000, action));
    }

    private static Pair pair(String name) {
        Key key = PLAN.key(name).orElseThrow();
        return new Pair(key.row(), key.column());
    }

    private void move(boolean closes, int thenMicros, String... keys) {
        for (String key : keys) {
            hear(closes ? new ProbeEvent.Closed(micros, pair(key)) : new ProbeEvent.Opened(micros, pair(key)));
        }
        micros += thenMicros;
    }

    private Outcome outcome() {
        return new Outcome(Optional.empty(), Optional.empty(), session, Diagnosis.NOTHING_YET);
    }

    private JsonObject json() {
        return JsonParser.parseString(DiagnosisJson.of("q.jsonl", Optional.of(outcome()), List.of()))
                .getAsJsonObject();
    }

    @Test
    void a_key_that_bounces_too_long_is_said_with_its_presses_and_makes_the_verdict() {
        move(true, 90_000, "W");
        move(false, 90_000, "W");
        move(true, 6_000, "Q");
        move(false, 7_000, "Q");
        move(true, 90_000, "Q");
        move(false, 90_000, "Q");
        String text = FindingsText.of(outcome(), false);
        assertTrue(text.contains("1 key bounced too long: 2 of 46 keys good, 44 untested."), text);
        assertTrue(text.contains("Bounce: Q bounced up to 13.0 ms, over the limit of 10.0 ms, in 1 of 1 press."), text);
        assertEquals(Verdict.BOUNCING, outcome().verdict());
        assertTrue(outcome().verdict().isWrong());
        assertEquals(
                "{\"presses\":1,\"over\":1,\"longestPressingMicros\":13000,\"longestLettingGoMicros\":0}",
                json().getAsJsonObject("bounce")
                        .getAsJsonObject("contacts")
                        .get("Q")
                        .toString());
        String table = BounceText.of(PLAN, session.bounces(), 1);
        assertTrue(
                table.startsWith("Bounce: 2 presses of 2 keys timed, limit 10.0 ms; longest 13.0 ms, of Q.\n"), table);
        assertTrue(table.contains("     10 to 20 ms  ######################################## 1  over\n"), table);
        assertTrue(table.contains("  Q              1   13.0 ms     0.0 ms  over in 1\n"), table);
        assertTrue(table.contains("  and 1 key that bounced less\n"), table);
        assertTrue(table.contains("up to 95.0 % of its presses"), table);
    }

    @Test
    void nothing_is_timed_before_the_first_press() {
        assertEquals("Bounce: no press has been timed yet.\n", BounceText.of(PLAN, session.bounces(), 9));
    }

    @Test
    void dropouts_are_said_with_whom_they_blame() {
        say(new Action.FlexBegun());
        move(true, 300_000, "W", "E", "R");
        move(false, 20_000, "E", "R");
        move(true, 300_000, "E", "R");
        String text = FindingsText.of(outcome(), false);
        assertTrue(text.contains("""
                        Flexed: E and R dropped out together once, for 20.0 ms at most; W stayed: look
                                at the link of R1 between W and E.
                        """), text);
        assertEquals(
                "[{\"dropped\":[\"E\",\"R\"],\"stayed\":[\"W\"],\"times\":1,\"longestMicros\":20000}]",
                json().get("flexed").toString());
    }

    @Test
    void keys_that_share_no_net_have_no_joint_in_common() {
        say(new Action.FlexBegun());
        move(true, 300_000, "Q", "D");
        move(false, 20_000, "Q", "D");
        move(true, 300_000, "Q", "D");
        assertEquals(
                List.of("Q and D dropped out together once, for 20.0 ms at most: no one joint lies on the way of all of"
                        + " these"),
                HeldText.dropouts(PLAN, session.flex()));
    }

    @Test
    void a_combination_that_is_not_as_computed_is_said_and_makes_the_verdict() {
        say(new Action.CalledTogether(List.of(Set.of(0, 1), Set.of(2, 3))));
        move(true, 300_000, "Esc", "Q");
        move(false, 300_000, "Esc", "Q");
        assertEquals(Verdict.UNFINISHED, outcome().verdict());
        Pair ghost = new Pair(pair("W").reads(), pair("E").reads());
        for (int time = 0; time < 2; time++) {
            hear(new ProbeEvent.Closed(micros, ghost));
            move(true, 300_000, "W");
            hear(new ProbeEvent.Opened(micros, ghost));
            move(false, 300_000, "W");
        }
        assertEquals(Verdict.UNEXPLAINED, outcome().verdict());
        String text = FindingsText.of(outcome(), false);
        assertTrue(text.contains("All at once: 1 of 2 combinations did not answer as computed.\n"), text);
        assertTrue(
                text.contains("W and E together: C3→C4 appeared, which nothing should close; R1→C4 did not\n    come."),
                text);
        assertEquals(
                "[{\"held\":[\"Esc\",\"Q\"],\"asComputed\":true},{\"held\":[\"W\",\"E\"],\"asComputed\":false}]",
                json().get("together").toString());
    }
}
