// Runs the compiled sketch in simulated time: what it reports of the board on its pins, and what it does to them.
#include "expect.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static void waits_the_settle_before_it_reads(void) {
    static const int MICROS[] = {3, 10, 100, 1000};
    for (int i = 0; i < 4; i++) {
        controller *c = started(SQUARE);
        char line[40];
        snprintf(line, sizeof line, "settle %d", MICROS[i]);
        char answer[40];
        snprintf(answer, sizeof answer, "ok settle %d", MICROS[i]);
        ask(c, line, answer);
        ask(c, "add F4 F5 B0 B1", "ok add 4");
        ask(c, "go", "ok go 4");
        expect(c, "full 0 # 0");
        pass(c, 50 * MILLI);
        check(c->shortestSettle >= (avr_cycle_count_t)MICROS[i] * MICRO, "no pin is read before it has settled");
        dialogue_end(c);
    }
}

static void begins_with_the_whole_state(void) {
    controller *c = started(
        "pin F4 row0\npin F5 row1\npin B0 column0\npin B1 column1\npin B2 stuck\npin B3 lit\n"
        "wire row0 row1\nswitch held column0 i\ndiode i row0\nground stuck\nled lit\n");
    hold(c, "held", true);
    ask(c, "add F4 F5 B0 B1 B2 B3", "ok add 6");
    ask(c, "go", "ok go 6");
    expect(c, "= 0 1");
    expect(c, "= 0 2");
    expect(c, "= 0 4");
    expect(c, "= 1 0");
    expect(c, "= 1 2");
    expect(c, "= 1 4");
    expect(c, "= 2 4");
    expect(c, "= 3 4");
    expect(c, "= 5 4");
    expect(c, "full 0 # 9");
    hold(c, "held", false);
    expect(c, "- 1 # 0 2");
    expect(c, "- 2 # 1 2");
    tell(c, "state");
    expect(c, "= 0 1");
    expect(c, "= 0 4");
    expect(c, "= 1 0");
    expect(c, "= 1 4");
    expect(c, "= 2 4");
    expect(c, "= 3 4");
    expect(c, "= 5 4");
    expect(c, "full 2 # 7");
    dialogue_end(c);
}

static void reports_presses_and_releases(void) {
    controller *c = sweeping_square();
    hold(c, "a", true);
    expect(c, "+ 1 # 0 2");
    hold(c, "d", true);
    expect(c, "+ 2 # 1 3");
    hold(c, "a", false);
    expect(c, "- 3 # 0 2");
    hold(c, "d", false);
    expect(c, "- 4 # 1 3");
    expect(c, "beat 4 # # 0");
    dialogue_end(c);
}

static void stamps_changes_within_a_sweep(void) {
    enum { MICROS_A_BYTE = 10 };
    controller *c = sweeping_square();
    long first = 0;
    for (int i = 0; i < 50; i++) {
        pass(c, 7 * MILLI + (avr_cycle_count_t)i * 37);
        hold(c, "a", i % 2 == 0);
        avr_cycle_count_t when = c->avr->cycle;
        const char *line = next_line(c);
        // Sweep and stamp wait while a line is written: a change that comes with a beat is late by its length as well.
        long beating = 0;
        for (; line != NULL && line[0] == 'b'; line = next_line(c)) beating = MICROS_A_BYTE * (long)(strlen(line) + 6);
        unsigned long seq = 0, micros = 0;
        check(line != NULL && sscanf(line + 2, "%lu %lu", &seq, &micros) == 2, "a change");
        long late = (long)(micros - when / MICRO);
        // The probe's clock began at its own zero. A sweep of four pins takes 80 microseconds, and stamps count in fours.
        if (i == 0) first = late;
        check(labs(late - first) <= 80 + 4 + beating, "the stamp is of the sweep that saw the change");
        check(seq == (unsigned long)i + 1, "changes are counted");
    }
    dialogue_end(c);
}

static void sees_a_reversed_diode_a_bypassed_one_and_a_bridge(void) {
    controller *c = started(
        "pin F4 row0\npin F5 row1\npin B0 column0\npin B1 column1\n"
        "switch turned column0 i\ndiode row0 i\n"
        "switch bypassed column1 j\nwire j row1\n"
        "switch bridge row0 row1\n");
    ask(c, "add F4 F5 B0 B1", "ok add 4");
    ask(c, "go", "ok go 4");
    expect(c, "full 0 # 0");
    hold(c, "turned", true);
    expect(c, "+ 1 # 2 0");
    hold(c, "turned", false);
    expect(c, "- 2 # 2 0");
    hold(c, "bypassed", true);
    const char *line = next_line(c);
    bool first = line != NULL && matches(line, "+ 3 # 1 3");
    check(first || (line != NULL && matches(line, "+ 3 # 3 1")), "one way");
    expect(c, first ? "+ 4 # 3 1" : "+ 4 # 1 3");
    hold(c, "bypassed", false);
    expect(c, first ? "- 5 # 1 3" : "- 5 # 3 1");
    expect(c, first ? "- 6 # 3 1" : "- 6 # 1 3");
    dialogue_end(c);
}

static void beats_four_times_a_second(void) {
    controller *c = sweeping_square();
    hold(c, "b", true);
    expect(c, "+ 1 # 0 3");
    skip_lines(c);
    pass(c, 1000 * MILLI);
    int beats = 0;
    for (const char *line = next_line(c); line != NULL && beats < 4; line = next_line(c)) {
        check(matches(line, "beat 1 # # 1"), "only beats come while nothing changes");
        beats++;
    }
    check(beats == 4, "four beats in a second");
    dialogue_end(c);
}

static void owns_up_when_changes_were_lost(void) {
    // All four keys at once, every 300 microseconds: more changes than any line can carry.
    controller *c = sweeping_square();
    belief b = {0};
    static const char *const KEYS[] = {"a", "b", "c", "d"};
    for (int i = 0; i < 1001; i++) {
        for (int k = 0; k < 4; k++) hold(c, KEYS[k], i % 2 == 0);
        pass(c, 300 * MICRO);
    }
    believe_all(c, &b);
    check(b.lost > 0, "changes were lost, and it says so");
    check(b.full > 0, "a whole state follows");
    check(!b.wrong, "numbers, counts and beats agree all the time");
    check(b.closed[0][2] && b.closed[0][3] && b.closed[1][2] && b.closed[1][3], "what is held is believed closed");
    printf("  of %lu changes %lu were sent and %lu lost\n", b.seq, b.changes, b.lost);
    dialogue_end(c);
}

static void loses_nothing_while_a_key_bounces(void) {
    // One key at 600 Hz for over three seconds. A USART takes no more: each byte costs the sketch 120 cycles there.
    controller *c = sweeping_square();
    belief b = {0};
    for (int i = 0; i < 4000; i++) {
        hold(c, "a", i % 2 == 0);
        pass(c, 833 * MICRO);
    }
    believe_all(c, &b);
    printf("  of 4000 changes %lu were seen, %lu lost\n", b.changes, b.lost);
    check(b.lost == 0, "nothing is lost");
    check(b.changes == 4000, "every change is sent");
    check(!b.wrong, "in order");
    dialogue_end(c);
}

static void turns_jtag_off(void) {
    controller *c = started("pin F4 a\npin F5 b\npin F6 c\npin F7 d\nswitch ab a i\ndiode b i\nswitch cd d j\ndiode j c\n");
    check(c->jtagOff, "JTD is written twice within four cycles");
    ask(c, "add F4 F5 F6 F7", "ok add 4");
    ask(c, "go", "ok go 4");
    expect(c, "full 0 # 0");
    hold(c, "ab", true);
    expect(c, "+ 1 # 0 1");
    hold(c, "cd", true);
    expect(c, "+ 2 # 2 3");
    dialogue_end(c);
}

static void drives_one_pin_at_a_time_and_only_low(void) {
    controller *c = sweeping_square();
    // Until the sketch's own start the core may blink its lights; that is over now.
    memset(c->drives, 0, sizeof c->drives);
    c->drivenHigh = c->drivenTogether = 0;
    pass(c, 100 * MILLI);
    check(c->drivenHigh == 0, "no pin is ever driven high");
    check(c->drivenTogether == 0, "no two pins are driven at once");
    check(controller_sweeps(c) > 500, "it sweeps");
    uint64_t others = 0;
    for (int pin = 0; pin < PINS; pin++) {
        bool listed = pin == pin_number("F4") || pin == pin_number("F5") || pin == pin_number("B0") || pin == pin_number("B1");
        if (!listed) others += c->drives[pin];
    }
    check(others == 0, "pins that are not listed are never driven");
    tell(c, "forget");
    expect(c, "ok forget");
    uint64_t before = controller_sweeps(c);
    pass(c, 100 * MILLI);
    check(controller_sweeps(c) == before, "it stops when told to forget");
    dialogue_end(c);
}

int main(int count, char **words) {
    static const test TESTS[] = {
        TEST(waits_the_settle_before_it_reads),
        TEST(begins_with_the_whole_state),
        TEST(reports_presses_and_releases),
        TEST(stamps_changes_within_a_sweep),
        TEST(sees_a_reversed_diode_a_bypassed_one_and_a_bridge),
        TEST(beats_four_times_a_second),
        TEST(owns_up_when_changes_were_lost),
        TEST(loses_nothing_while_a_key_bounces),
        TEST(turns_jtag_off),
        TEST(drives_one_pin_at_a_time_and_only_low),
    };
    return run_tests(count, words, TESTS, sizeof TESTS / sizeof *TESTS);
}
