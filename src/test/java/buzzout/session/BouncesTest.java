package buzzout.session;

import static buzzout.session.Hands.key;
import static buzzout.session.Hands.pair;
import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.probe.ProbeEvent;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bounce times from the probe's microseconds. */
class BouncesTest {
    /** Changes of Q's pair at these microseconds, closing and opening by turns. */
    private static Contact contact(long... changes) {
        Hands hands = Hands.afterQuietCheck();
        boolean closes = true;
        for (long micros : changes) {
            long at = 3_000_000 + micros;
            hands.hear(closes ? new ProbeEvent.Closed(at, pair("Q")) : new ProbeEvent.Opened(at, pair("Q")));
            closes = !closes;
        }
        assertEquals(1, hands.presses().size());
        return hands.presses().get(0).contact();
    }

    @Test
    void a_clean_contact_bounces_for_no_time() {
        assertEquals(0, contact(0, 80_000).bounceMicros());
        assertEquals(0, contact(0, 80_000).releaseBounceMicros());
    }

    @Test
    void bounce_lasts_from_the_first_closing_to_the_last_before_rest() {
        assertEquals(1_700, contact(0, 300, 900, 1_100, 1_700).bounceMicros());
        assertEquals(1_700, contact(0, 300, 900, 1_100, 1_700, 90_000).bounceMicros());
    }

    @Test
    void at_the_release_it_lasts_from_the_first_opening_to_the_last() {
        Contact contact = contact(0, 400, 600, 90_000, 90_500, 92_100);
        assertEquals(600, contact.bounceMicros());
        assertEquals(2_100, contact.releaseBounceMicros());
    }

    @Test
    void one_that_bounces_for_long_is_timed_to_its_end() {
        assertEquals(43_000, contact(0, 15_000, 20_000, 38_000, 43_000, 200_000).bounceMicros());
    }

    @Test
    void a_tap_too_short_to_come_to_rest_has_no_release() {
        assertEquals(0, contact(0, 9_000).bounceMicros());
        assertEquals(0, contact(0, 9_000).releaseBounceMicros());
    }

    @Test
    void a_key_over_the_limit_is_marked_with_the_presses_that_it_rests_on() {
        Hands hands = Hands.afterQuietCheck().press("W").press("Q");
        hands.close(pair("Q")).wait(5).open(pair("Q")).wait(7).press("Q");
        Bounces bounces = hands.session().bounces();
        assertEquals(3, bounces.presses());
        Bounces.OfKey worst = bounces.overLimit().get(0);
        assertEquals(1, bounces.overLimit().size());
        assertEquals(key("Q").index(), worst.key());
        assertEquals(2, worst.presses());
        assertEquals(1, worst.over());
        assertEquals(12_000, worst.longestPressing());
    }

    @Test
    void a_contact_that_bounces_too_long_only_when_let_go_is_over_the_limit_too_and_the_worst_comes_first() {
        Hands hands = Hands.afterQuietCheck();
        hands.close(pair("Q")).wait(5).open(pair("Q")).wait(6).press("Q");
        hands.close(pair("W")).wait(80).open(pair("W")).wait(6);
        hands.close(pair("W")).wait(7).open(pair("W")).wait(80);
        List<Bounces.OfKey> over = hands.session().bounces().overLimit();
        assertEquals(
                List.of(key("W").index(), key("Q").index()),
                over.stream().map(Bounces.OfKey::key).toList());
        assertEquals(0, over.get(0).longestPressing());
        assertEquals(13_000, over.get(0).longestLettingGo());
    }

    @Test
    void bars_end_at_the_limit_and_hold_every_press() {
        Hands hands = Hands.afterQuietCheck().press("W").press("E");
        hands.close(pair("Q")).wait(5).open(pair("Q")).wait(5).press("Q");
        hands.close(pair("R")).wait(5).open(pair("R")).wait(6).press("R");
        List<Bounces.Bar> bars = hands.session().bounces().histogram();
        assertEquals(4, bars.stream().mapToInt(Bounces.Bar::presses).sum());
        assertEquals(
                List.of(new Bounces.Bar(0, 500, 2, false), new Bounces.Bar(5_000, 10_000, 1, false)),
                bars.stream().filter(bar -> bar.presses() > 0 && !bar.over()).toList());
        assertEquals(
                List.of(10_000L, 20_000L),
                bars.stream()
                        .filter(Bounces.Bar::over)
                        .map(Bounces.Bar::fromMicros)
                        .toList());
    }

    @Test
    void fingers_that_roll_over_and_a_probe_that_starts_anew_are_not_timed_as_bounce() {
        Hands hands = Hands.afterQuietCheck();
        hands.close(pair("Q"))
                .wait(60)
                .close(pair("W"))
                .wait(30)
                .open(pair("Q"))
                .wait(60)
                .open(pair("W"));
        assertEquals(1, hands.session().bounces().presses(), "W came in company");
        hands.wait(100).close(pair("E")).hear(new ProbeEvent.LinkLost("unplugged"));
        hands.hear(new ProbeEvent.WholeState(5, buzzout.circuit.Pairs.NONE));
        assertEquals(0, hands.session().bounces().keys().get(0).longest());
    }

    /** Computed from (1 - q)^n = 0.05; compare Hanley and Lippman-Hand, JAMA 249:1743, 1983 (memory). */
    @ParameterizedTest
    @CsvSource({"30, 0.0950", "60, 0.0487"})
    void presses_without_a_failure_bound_the_rate_of_failure(int presses, double rate) {
        assertEquals(rate, Confidence.mostFailing(presses), 0.00005);
        assertEquals(1, Confidence.mostFailing(0));
    }

    /** Computed from the same, rounded up. */
    @ParameterizedTest
    @CsvSource({"0.5, 5", "0.2, 14", "0.1, 29", "0.05, 59", "0.01, 299"})
    void rarer_failures_take_more_presses_to_see(double rate, int presses) {
        assertEquals(presses, Confidence.pressesToSee(rate));
    }
}
