package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ConversationTest {
    private static final String IAM = "iam 1 0.1.0 ATmega32U4 26 16000000";
    private static final Identity IDENTITY = new Identity(1, "0.1.0", "ATmega32U4", 26, 16_000_000);
    private static final String LOST_WORD = "started again";

    private final Plan plan = TestBoard.plan();
    private final Conversation conversation = new Conversation(plan, SettleTime.of(10));
    private final List<String> sent = new ArrayList<>();
    private final List<ProbeEvent> events = new ArrayList<>();
    private long now = 1_000_000;

    @Test
    void lists_the_plan_s_pins_and_starts_the_sweep() {
        follow(conversation.opened("port", now));
        hear(IAM);
        hear("ok forget");
        hear("ok add 8");
        hear("ok settle 10");
        hear("ok go 8");

        assertEquals(List.of("who 1", "forget", "add F0 F1 F4 B1 B2 B3 B4 B0", "settle 10", "go"), sent);
        assertEquals(List.of(new ProbeEvent.Found(IDENTITY, "port")), events);
    }

    @Test
    void says_that_an_older_sketch_cannot_measure_its_settle() {
        Conversation measured = new Conversation(plan, SettleTime.MEASURED);
        follow(measured.opened("port", now));
        for (String line : List.of(IAM, "ok forget", "ok add 8", "no settle range")) {
            follow(measured.heard(new Received.Good(line), now));
        }

        assertEquals("settle auto", sent.get(sent.size() - 1));
        assertEquals(
                List.of(new ProbeEvent.Refused("The sketch on the probe, 0.1.0, does not measure rise times: flash the"
                        + " one that came with this program.")),
                events);
    }

    @Test
    void tells_the_whole_state_then_changes_in_time_since_the_sweep_began() {
        sweep();
        hear("= 0 3");
        hear("= 3 0");
        hear("full 0 5000000 2");
        hear("+ 1 5000100 1 4");
        hear("- 2 5000900 1 4");

        assertEquals(
                List.of(
                        new ProbeEvent.WholeState(0, Pairs.of(new Pair(0, 3), new Pair(3, 0))),
                        new ProbeEvent.Closed(100, new Pair(1, 4)),
                        new ProbeEvent.Opened(900, new Pair(1, 4))),
                events);
    }

    @Test
    void asks_again_every_half_second_and_says_so_once_when_nothing_answers() {
        follow(conversation.opened("port", now));
        for (int half = 0; half < 40; half++) {
            pass(500_000);
        }

        assertEquals(41, sent.stream().filter("who 1"::equals).count());
        assertEquals(1, events.size());
        assertTrue(
                events.get(0) instanceof ProbeEvent.LinkLost lost && lost.why().contains("flash"), events::toString);
    }

    @Test
    void starts_its_list_afresh_when_an_answer_is_lost() {
        follow(conversation.opened("port", now));
        hear(IAM);
        hear("ok forget");
        pass(500_000);
        hear("ok add 8");
        hear("ok forget");
        hear("ok add 8");

        assertEquals(
                List.of(
                        "who 1",
                        "forget",
                        "add F0 F1 F4 B1 B2 B3 B4 B0",
                        "forget",
                        "add F0 F1 F4 B1 B2 B3 B4 B0",
                        "settle 10"),
                sent);
    }

    @Test
    void says_so_when_a_probe_never_does_as_told_and_asks_from_the_start() {
        follow(conversation.opened("port", now));
        hear(IAM);
        for (int half = 0; half < 10; half++) {
            pass(500_000);
        }

        assertEquals("who 1", sent.get(sent.size() - 1));
        assertEquals(1, events.size());
        assertTrue(
                events.get(0) instanceof ProbeEvent.LinkLost lost && lost.why().contains("does not do as told"));
    }

    @Test
    void takes_a_second_introduction_before_the_sweep_calmly() {
        follow(conversation.opened("port", now));
        hear(IAM);
        hear(IAM);
        hear("ok forget");
        hear("ok forget");
        hear("ok add 8");
        hear("ok settle 10");
        hear("ok go 8");

        assertEquals(List.of(new ProbeEvent.Found(IDENTITY, "port")), events);
    }

    @Test
    void counts_missing_changes_and_asks_for_the_state() {
        watch();
        hear("+ 1 100 1 4");
        hear("+ 4 200 2 4");
        assertEquals(List.of("state"), sent);
        hear("= 2 4");
        hear("full 4 300 1");

        assertEquals(
                List.of(
                        new ProbeEvent.Closed(100, new Pair(1, 4)),
                        new ProbeEvent.Lost(2),
                        new ProbeEvent.Closed(200, new Pair(2, 4)),
                        new ProbeEvent.WholeState(300, Pairs.of(new Pair(2, 4)))),
                events);
    }

    @Test
    void notices_by_the_beat_that_the_last_change_is_missing() {
        watch();
        hear("beat 1 250000 800 1");

        assertEquals(List.of(new ProbeEvent.Lost(1)), events);
        assertEquals(List.of("state"), sent);
    }

    @Test
    void notices_by_the_beat_that_it_has_another_state() {
        watch();
        hear("beat 0 250000 800 3");

        assertEquals(List.of(new ProbeEvent.Lost(3)), events);
        assertEquals(List.of("state"), sent);
    }

    @Test
    void says_nothing_at_a_beat_that_agrees() {
        watch();
        hear("+ 1 100 1 4");
        events.clear();
        hear("beat 1 250000 800 1");

        assertEquals(List.of(), events);
        assertEquals(List.of(), sent);
    }

    @Test
    void passes_on_what_the_probe_lost_and_waits_for_the_state_that_follows() {
        watch();
        hear("lost 7 7");
        hear("= 1 4");
        hear("full 7 500 1");
        hear("- 8 600 1 4");

        assertEquals(
                List.of(
                        new ProbeEvent.Lost(7),
                        new ProbeEvent.WholeState(500, Pairs.of(new Pair(1, 4))),
                        new ProbeEvent.Opened(600, new Pair(1, 4))),
                events);
        assertEquals(List.of(), sent);
    }

    @Test
    void asks_again_for_a_whole_state_that_is_not_whole() {
        watch();
        hear("lost 1 1");
        hear("= 1 4");
        hear("full 1 500 2");

        assertEquals(List.of("state"), sent);
        assertEquals(List.of(new ProbeEvent.Lost(1)), events);
    }

    @Test
    void does_not_trust_a_whole_state_with_garbage_in_it() {
        watch();
        hear("lost 1 1");
        follow(conversation.heard(new Received.Garbage(Received.Cause.CHECK, "= 1"), now));
        hear("= 1 4");
        hear("full 1 500 1");

        assertEquals(List.of("state"), sent);
    }

    @Test
    void asks_again_for_a_state_that_does_not_come() {
        watch();
        hear("beat 1 250000 800 1");
        pass(250_000);
        hear("beat 1 500000 1600 1");
        pass(250_000);

        assertEquals(List.of("state", "state"), sent);
    }

    @Test
    void hears_a_doubled_line_once() {
        watch();
        hear("+ 1 100 1 4");
        hear("+ 1 100 1 4");

        assertEquals(List.of(new ProbeEvent.Closed(100, new Pair(1, 4))), events);
        assertEquals(List.of(), sent);
    }

    @Test
    void doubts_a_change_that_changes_nothing() {
        watch();
        hear("- 1 100 1 4");

        assertEquals(List.of("state"), sent);
    }

    @Test
    void follows_numbers_and_times_past_their_wrap() {
        sweep();
        hear("full 4294967294 4294967196 0");
        hear("+ 4294967295 4294967246 1 4");
        hear("- 0 50 1 4");
        hear("+ 1 150 1 4");

        assertEquals(
                List.of(
                        new ProbeEvent.WholeState(0, Pairs.NONE),
                        new ProbeEvent.Closed(50, new Pair(1, 4)),
                        new ProbeEvent.Opened(150, new Pair(1, 4)),
                        new ProbeEvent.Closed(250, new Pair(1, 4))),
                events);
        assertEquals(List.of(), sent);
    }

    @Test
    void sets_a_probe_up_anew_that_started_again_and_lets_time_go_on() {
        watch();
        hear("+ 1 1000000 1 4");
        now += 700_000;
        hear("iam 1 0.1.0 ATmega32U4 26 16000000");
        assertEquals(List.of("forget"), sent);
        answerTheList();
        hear("full 0 40 0");

        assertEquals(4, events.size(), events::toString);
        assertTrue(
                events.get(1) instanceof ProbeEvent.LinkLost lost && lost.why().contains(LOST_WORD));
        assertEquals(new ProbeEvent.Found(IDENTITY, "port"), events.get(2));
        assertEquals(new ProbeEvent.WholeState(1_700_000, Pairs.NONE), events.get(3));
    }

    @Test
    void notices_a_restart_whose_introduction_was_lost() {
        watch();
        hear("no state stopped");

        assertEquals(List.of("who 1"), sent);
        assertTrue(
                events.get(0) instanceof ProbeEvent.LinkLost lost && lost.why().contains(LOST_WORD));
    }

    @Test
    void calls_a_probe_lost_that_goes_quiet_and_finds_it_again() {
        watch();
        pass(1_499_999);
        assertEquals(List.of(), events);
        pass(1);
        assertTrue(
                events.get(0) instanceof ProbeEvent.LinkLost lost && lost.why().contains("quiet"));
        hear(IAM);
        answerTheList();

        assertEquals(new ProbeEvent.Found(IDENTITY, "port"), events.get(1));
    }

    @Test
    void goes_on_in_time_on_a_new_link() {
        watch();
        hear("+ 1 1000000 1 4");
        now += 5_000_000;
        follow(conversation.opened("other port", now));
        hear(IAM);
        answerTheList();
        hear("full 0 77 0");

        assertEquals(new ProbeEvent.Found(IDENTITY, "other port"), events.get(1));
        assertEquals(new ProbeEvent.WholeState(6_000_000, Pairs.NONE), events.get(2));
    }

    @Test
    void refuses_a_probe_of_another_protocol_once() {
        follow(conversation.opened("port", now));
        hear("iam 2 1.0.0 something else");
        hear("iam 2 1.0.0 something else");

        assertEquals(
                List.of(new ProbeEvent.Refused("The probe speaks version 2 of the protocol and this program version 1:"
                        + " flash the sketch that came with this program.")),
                events);
    }

    @Test
    void says_which_net_has_the_pin_that_the_probe_lacks() {
        follow(conversation.opened("port", now));
        hear(IAM);
        hear("ok forget");
        hear("no add pin B2");

        assertEquals(
                List.of(new ProbeEvent.Refused("The probe's ATmega32U4 cannot offer pin B2, which the plan gives to"
                        + " column C2: move that lead to another pin, or correct the plan.")),
                events);
    }

    @Test
    void says_that_the_flying_lead_has_a_pin_that_the_probe_lacks() {
        follow(conversation.opened("port", now));
        hear(IAM);
        hear("ok forget");
        hear("no add pin B0");

        assertTrue(events.get(0) instanceof ProbeEvent.Refused refused
                && refused.why().contains("the flying lead"));
    }

    @Test
    void says_that_a_chip_has_too_few_pins() {
        follow(conversation.opened("port", now));
        hear("iam 1 0.1.0 ATmega328P 7 16000000");

        assertEquals(
                List.of(new ProbeEvent.Refused(
                        "The plan uses 8 pins and the probe's ATmega328P sweeps at most 7: take a"
                                + " controller with more pins, or fewer rows and columns.")),
                events);
    }

    @Test
    void tries_again_when_a_flashed_probe_introduces_itself_after_a_refusal() {
        follow(conversation.opened("port", now));
        hear("iam 2 1.0.0 something else");
        sent.clear();
        hear(IAM);

        assertEquals(List.of("forget"), sent);
    }

    @Test
    void makes_nothing_of_a_first_line_that_was_cut() {
        follow(conversation.opened("port", now));
        follow(conversation.heard(new Received.Garbage(Received.Cause.CHECK, "5 1*7B42"), now));
        pass(250_000);
        assertEquals(List.of(), events);
        follow(conversation.heard(new Received.Garbage(Received.Cause.CHECK, "5 1*7B42"), now));
        pass(250_000);
        assertEquals(List.of(new ProbeEvent.Garbled(1, "5 1*7B42")), events);
    }

    @Test
    void takes_an_answer_that_says_more_than_this_version_knows() {
        follow(conversation.opened("port", now));
        hear(IAM + " and more");
        hear("ok forget and more");

        assertEquals("add F0 F1 F4 B1 B2 B3 B4 B0", sent.get(2));
    }

    @Test
    void ignores_but_counts_what_a_newer_probe_says() {
        watch();
        hear("volts 3 5 0.52");

        assertEquals(List.of(), events);
        assertEquals(1, conversation.unknownMessages());
    }

    @Test
    void reports_garbage_at_a_calm_pace_whatever_its_rate() {
        watch();
        for (int line = 0; line < 1_000; line++) {
            follow(conversation.heard(new Received.Garbage(Received.Cause.CHECK, "line " + line), now));
            pass(1_000);
            hear("beat 0 " + line * 1000 + " 800 0");
        }

        assertEquals(4, events.size());
        assertEquals(new ProbeEvent.Garbled(1, "line 0"), events.get(0));
        assertEquals(new ProbeEvent.Garbled(250, "line 250"), events.get(1));
    }

    @Test
    void takes_pairs_of_pins_that_were_never_listed_for_nothing() {
        watch();
        hear("+ 1 100 1 40");

        assertEquals(List.of(), events);
    }

    @Test
    void takes_the_last_pin_of_the_list_for_one_and_the_next_for_none() {
        watch();
        hear("+ 1 100 1 7");
        hear("+ 2 100 1 8");
        hear("+ 2 100 8 1");

        assertEquals(List.of(new ProbeEvent.Closed(100, new Pair(1, 7))), events);
    }

    @Test
    void takes_a_chip_with_just_enough_pins() {
        follow(conversation.opened("port", now));
        hear("iam 1 0.1.0 small 8 16000000");

        assertEquals(List.of("who 1", "forget"), sent);
    }

    @Test
    void asks_for_the_first_state_when_it_does_not_come_but_not_at_once() {
        sweep();
        pass(400_000);
        hear("beat 0 400000 1 0");
        assertEquals(List.of(), sent, "a beat before the first state tells nothing");
        pass(100_000);

        assertEquals(List.of("state"), sent);
    }

    @Test
    void gives_a_state_time_as_long_as_pieces_of_it_come() {
        watch();
        hear("lost 2 2");
        pass(400_000);
        hear("= 1 4");
        pass(400_000);
        hear("= 2 4");
        pass(400_000);
        assertEquals(List.of(), sent);
        pass(100_000);

        assertEquals(List.of("state"), sent);
    }

    @Test
    void counts_what_a_probe_lost_and_what_was_lost_on_the_way_of_the_same_once() {
        watch();
        hear("+ 1 100 1 4");
        hear("lost 5 4");
        hear("full 5 200 0");
        hear("lost 9 2");

        assertEquals(
                List.of(
                        new ProbeEvent.Closed(100, new Pair(1, 4)),
                        new ProbeEvent.Lost(4),
                        new ProbeEvent.WholeState(200, Pairs.NONE),
                        new ProbeEvent.Lost(4)),
                events);
    }

    @Test
    void forgets_the_pieces_of_a_state_once_it_is_whole() {
        watch();
        hear("lost 1 1");
        hear("= 1 4");
        hear("full 1 100 1");
        hear("full 1 200 0");

        assertEquals(new ProbeEvent.WholeState(200, Pairs.NONE), events.get(events.size() - 1));
        assertEquals(List.of(), sent);
    }

    @Test
    void counts_a_line_that_is_whole_and_makes_no_sense_and_says_so_where_nothing_answers() {
        follow(conversation.opened("port", now));
        hear("+ 1");
        hear("lost 1");
        hear("beat 1 2 3");
        for (int half = 0; half < 10; half++) {
            pass(500_000);
        }

        assertEquals(new ProbeEvent.Garbled(3, "beat 1 2 3"), events.get(0));
        assertTrue(
                events.get(1) instanceof ProbeEvent.LinkLost lost && lost.why().contains("(3 lines make no sense)"),
                events::toString);
    }

    @Test
    void says_nothing_of_nonsense_where_nothing_was_heard_at_all() {
        follow(conversation.opened("port", now));
        for (int half = 0; half < 10; half++) {
            pass(500_000);
        }

        assertTrue(
                events.get(0) instanceof ProbeEvent.LinkLost lost && lost.why().startsWith("Nothing on port answers"),
                events::toString);
    }

    /** Up to the moment when the probe answers {@code go}. */
    private void sweep() {
        follow(conversation.opened("port", now));
        hear(IAM);
        answerTheList();
        sent.clear();
        events.clear();
    }

    /** Up to an empty whole state at time 0. */
    private void watch() {
        sweep();
        hear("full 0 0 0");
        events.clear();
    }

    private void answerTheList() {
        hear("ok forget");
        hear("ok add 8");
        hear("ok settle 10");
        hear("ok go 8");
    }

    private void hear(String body) {
        follow(conversation.heard(new Received.Good(body), now));
    }

    private void pass(long micros) {
        now += micros;
        follow(conversation.tick(now));
    }

    private void follow(Conversation.Turn turn) {
        sent.addAll(turn.lines());
        events.addAll(turn.events());
    }
}
