package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Bridge;
import buzzout.circuit.DiodeReversed;
import buzzout.circuit.Fault;
import buzzout.circuit.LeadOff;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.circuit.PinLow;
import buzzout.circuit.SwitchHeld;
import buzzout.plan.Key;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What every probe must do, whether simulated, behind a pty, or the sketch itself. */
abstract class ProbeContract {
    private static final Key K6 = TestBoard.key("K6");

    /** K6's row R2 is driven low and its column C2 reads low. */
    private static final Pair OF_K6 = new Pair(1, 4);

    private static final Pair C2_TO_C3 = new Pair(4, 5);

    /** A fresh bench whose {@link TestBoard} has these faults. */
    abstract Bench bench(Fault... faults) throws Exception;

    @Test
    void says_who_it_is_and_takes_the_plan_s_pins() throws Exception {
        try (Bench bench = bench();
                Play play = new Play(bench.source())) {
            Identity identity = play.first(ProbeEvent.Found.class).identity();

            assertEquals(1, identity.protocol());
            assertEquals(TestBoard.plan().controller().name(), identity.chip());
            assertTrue(identity.mostPins() >= TestBoard.plan().pins().size());
        }
    }

    @Test
    void tells_what_conducts_before_any_press() throws Exception {
        try (Bench bench = bench(new SwitchHeld(K6.index()));
                Play play = new Play(bench.source())) {
            assertEquals(
                    Pairs.of(OF_K6), play.first(ProbeEvent.WholeState.class).pairs());
        }
    }

    @Test
    void tells_of_each_key_by_its_own_pair() throws Exception {
        try (Bench bench = bench();
                Play play = new Play(bench.source())) {
            assertEquals(Pairs.NONE, play.first(ProbeEvent.WholeState.class).pairs());
            for (Key key : TestBoard.plan().keys()) {
                bench.press(key);
                play.untilNow(Pairs.of(new Pair(key.row(), key.column())));
                bench.release(key);
                play.untilNow(Pairs.NONE);
            }
        }
    }

    @Test
    void sees_a_reversed_diode_from_its_other_side() throws Exception {
        try (Bench bench = bench(new DiodeReversed(K6.index()));
                Play play = new Play(bench.source())) {
            play.first(ProbeEvent.WholeState.class);
            bench.press(K6);
            play.untilNow(Pairs.of(OF_K6.turned()));
        }
    }

    @Test
    void sees_a_bridge_between_two_columns_both_ways_and_in_a_press() throws Exception {
        try (Bench bench = bench(new Bridge(K6.column(), K6.index(), K6.column() + 1, K6.index() + 1));
                Play play = new Play(bench.source())) {
            Pairs quiet = Pairs.of(C2_TO_C3, C2_TO_C3.turned());

            assertEquals(quiet, play.first(ProbeEvent.WholeState.class).pairs());
            bench.press(K6);
            play.untilNow(quiet.with(OF_K6).with(new Pair(1, 5)));
        }
    }

    @Test
    void tells_of_each_key_with_a_settle_that_it_measured() throws Exception {
        try (Bench bench = bench();
                Play play = new Play(bench.source(), SettleTime.MEASURED)) {
            assertEquals(Pairs.NONE, play.first(ProbeEvent.WholeState.class).pairs());
            bench.press(K6);
            play.untilNow(Pairs.of(OF_K6));
            bench.release(K6);
            play.untilNow(Pairs.NONE);
        }
    }

    @Test
    void measures_a_pin_whose_lead_is_off_as_the_first_to_rise() throws Exception {
        int off = K6.column();
        try (Bench bench = bench(new LeadOff(off))) {
            List<OptionalLong> nanos =
                    RiseMeasurement.of(TestBoard.plan(), bench.source()).nanos();

            for (int pin = 0; pin < nanos.size(); pin++) {
                int other = pin;
                boolean sooner = nanos.get(off).getAsLong() < nanos.get(other).getAsLong();
                assertEquals(other != off, sooner, () -> "pin " + other + ": " + nanos);
            }
        }
    }

    @Test
    void measures_past_a_pin_that_is_held_low() throws Exception {
        int held = K6.row();
        try (Bench bench = bench(new PinLow(held))) {
            RiseMeasurement.Measured measured = RiseMeasurement.of(TestBoard.plan(), bench.source());

            for (int pin = 0; pin < measured.nanos().size(); pin++) {
                assertEquals(pin != held, measured.nanos().get(pin).isPresent(), measured::toString);
            }
            long slowest = measured.nanos().stream()
                    .flatMapToLong(OptionalLong::stream)
                    .max()
                    .getAsLong();
            assertEquals(Math.max(5, 2 * slowest / 1000.0), measured.settleMicros(), 1, measured::toString);
        }
    }

    @Test
    void is_set_up_anew_after_a_reset_and_time_goes_on() throws Exception {
        try (Bench bench = bench();
                Play play = new Play(bench.source())) {
            play.first(ProbeEvent.WholeState.class);
            bench.press(K6);
            play.untilNow(Pairs.of(OF_K6));
            int before = play.events().size();
            bench.reset();
            play.first(ProbeEvent.LinkLost.class, before);
            play.first(ProbeEvent.Found.class, before);
            assertEquals(
                    Pairs.of(OF_K6),
                    play.first(ProbeEvent.WholeState.class, before).pairs());
            bench.release(K6);
            play.untilNow(Pairs.NONE);

            List<Long> times = Play.times(play.events());
            assertEquals(times.stream().sorted().toList(), times);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "settle 10,ok settle 10",
        "settle 1,ok settle 1",
        "settle 1000,ok settle 1000",
        "settle 0,no settle range",
        "settle 1001,no settle range",
        "settle 010,no settle range",
        "settle,no settle fields",
        "settle auto,no settle empty",
        "rise,no rise fields",
        "rise 0,no rise index",
        "forget,ok forget",
        "forget all,no forget fields",
        "add F0 F1,ok add 2",
        "add F0 Z9,no add pin Z9",
        "add F0 F0,no add twice F0",
        "add,no add fields",
        "go,no go empty",
        "state,no state stopped",
        "stop,ok stop",
        "who,no who fields",
        "who 0,no who version",
        "who one,no who version",
        "hello,no ? verb"
    })
    void answers_each_command_by_the_letter(String command, String answer) throws Exception {
        try (Bench bench = bench();
                RawTalk talk = new RawTalk(bench.source())) {
            talk.say(command);

            assertEquals(answer, talk.answer());
        }
    }

    @Test
    void lists_all_the_pins_of_a_line_or_none() throws Exception {
        try (Bench bench = bench();
                RawTalk talk = new RawTalk(bench.source())) {
            talk.say("add F0 Z9");
            assertEquals("no add pin Z9", talk.answer());
            talk.say("add F1");
            assertEquals("ok add 1", talk.answer());
        }
    }

    @Test
    void lists_no_more_pins_while_it_sweeps() throws Exception {
        try (Bench bench = bench();
                RawTalk talk = new RawTalk(bench.source())) {
            talk.say("add F0 F1");
            talk.until("ok add 2");
            talk.say("go");
            talk.until("ok go 2");
            talk.say("add F4");
            talk.until("no add sweeping");
        }
    }

    @Test
    void says_what_is_wrong_with_a_line_that_is_not_whole() throws Exception {
        try (Bench bench = bench();
                RawTalk talk = new RawTalk(bench.source())) {
            talk.bytes("forget*0000\n");
            assertEquals("no ? crc", talk.answer());
            talk.bytes("x".repeat(200) + "\n");
            assertEquals("no ? long", talk.answer());
            talk.bytes("add  F0*%04X\n".formatted(Crc16.of("add  F0".getBytes(StandardCharsets.US_ASCII), 7)));
            assertEquals("no ? fields", talk.answer());
        }
    }

    @Test
    void answers_no_echo_of_its_own_lines() throws Exception {
        try (Bench bench = bench();
                RawTalk talk = new RawTalk(bench.source())) {
            talk.say("ok forget");
            talk.say("no ? verb");
            talk.say("stop");

            assertEquals("ok stop", talk.answer());
        }
    }

    @Test
    void survives_any_input() throws Exception {
        long seed = 20261125;
        Random random = new Random(seed);
        try (Bench bench = bench();
                RawTalk talk = new RawTalk(bench.source())) {
            for (int round = 0; round < 50; round++) {
                byte[] noise = new byte[random.nextInt(1, 60)];
                random.nextBytes(noise);
                talk.bytes(new String(noise, StandardCharsets.ISO_8859_1));
            }
            talk.settleUp();
            talk.say("stop");

            assertEquals("ok stop", talk.answer(), "seed " + seed);
        }
    }
}
