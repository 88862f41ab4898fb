// Runs the compiled sketch in simulated time: how long it says that pins take to rise, beside how long they do.
#include "expect.h"

#include <stdio.h>
#include <string.h>

/** A turn of the loop that looks at the pin, and how soon after the release it looks first; in cycles. */
enum { TURN = 8, FIRST_LOOK = 6 };

static controller *with_rise(int cycles) {
    char wiring[60];
    snprintf(wiring, sizeof wiring, "pin F4 row\npin B0 column\nrise B0 %.4f\n", cycles / (double)MICRO);
    controller *c = started(wiring);
    ask(c, "add F4 B0", "ok add 2");
    return c;
}

/** The cycles that the answer's nanoseconds are. */
static double told(controller *c, const char *command, const char *answer) {
    unsigned long nanos = 0;
    tell(c, command);
    const char *line = next_line(c);
    check(line != NULL && sscanf(line, answer, &nanos) == 1, "it tells a rise");
    return (double)nanos * MICRO / 1000;
}

static void tells_each_rise_within_a_turn_of_its_loop(void) {
    double earliest = 1e9, latest = -1e9;
    for (int cycles = FIRST_LOOK; cycles < 7900; cycles += cycles < 100 ? 1 : cycles / 7) {
        controller *c = with_rise(cycles);
        double error = told(c, "rise 1", "ok rise 1 %lu") - cycles;
        if (error < earliest) earliest = error;
        if (error > latest) latest = error;
        dialogue_end(c);
    }
    printf("  %.1f to %.1f cycles late\n", earliest, latest);
    check(earliest >= -1, "no rise is told early");
    check(latest <= TURN, "no rise is told more than a turn late");
}

static void tells_the_shortest_that_it_can_see(void) {
    controller *c = with_rise(0);
    double first = told(c, "rise 1", "ok rise 1 %lu");
    check(first > 0 && first <= FIRST_LOOK + 2, "a rise before the first look is told as at that look");
    dialogue_end(c);
}

static void says_so_when_a_pin_does_not_rise(void) {
    controller *c = started("pin F4 row\npin B0 column\npin B1 other\nground row\nrise B1 520\n");
    ask(c, "add F4 B0 B1", "ok add 3");
    avr_cycle_count_t before = c->avr->cycle;
    ask(c, "rise 0", "no rise low 0");
    check(c->avr->cycle - before < 5 * MILLI, "it does not wait for it for ever");
    ask(c, "rise 1", "ok rise 1 #");
    ask(c, "rise 2", "no rise low 2");
    dialogue_end(c);
}

static void measures_listed_pins_only(void) {
    controller *c = started(SQUARE);
    ask(c, "rise 0", "no rise index");
    ask(c, "add F4 F5", "ok add 2");
    ask(c, "rise 1", "ok rise 1 #");
    ask(c, "rise 2", "no rise index");
    ask(c, "rise 4294967295", "no rise index");
    ask(c, "rise F4", "no rise index");
    ask(c, "rise", "no rise fields");
    ask(c, "rise 0 1", "no rise fields");
    dialogue_end(c);
}

static void measures_in_mid_sweep_and_changes_nothing(void) {
    controller *c = sweeping_square();
    hold(c, "a", true);
    expect(c, "+ 1 # 0 2");
    memset(c->drives, 0, sizeof c->drives);
    c->drivenHigh = c->drivenTogether = 0;
    for (int i = 0; i < 50; i++) {
        char rise[20], answer[40];
        snprintf(rise, sizeof rise, "rise %d", i % 4);
        snprintf(answer, sizeof answer, "ok rise %d #", i % 4);
        ask(c, rise, answer);
    }
    expect(c, "beat 1 # # 1");
    check(c->drivenHigh == 0 && c->drivenTogether == 0, "no pin is driven high, and no two at once");
    dialogue_end(c);
}

static const char SLOW[] =
    "pin F4 row0\npin F5 row1\npin B0 column0\npin B1 column1\n"
    "switch a column0 ia\ndiode ia row0\nswitch d column1 id\ndiode id row1\nrise B0 13.7\n";

static void sees_ghosts_where_a_pin_rises_later_than_the_settle(void) {
    controller *c = started(SLOW);
    ask(c, "add F4 F5 B0 B1", "ok add 4");
    ask(c, "settle 10", "ok settle 10");
    ask(c, "go", "ok go 4");
    expect(c, "= 3 2");
    expect(c, "full 0 # 1");
    dialogue_end(c);
}

static void sees_no_ghost_and_loses_nothing_with_a_settle_that_it_measured(void) {
    controller *c = started(SLOW);
    ask(c, "add F4 F5 B0 B1", "ok add 4");
    ask(c, "settle auto", "ok settle 28");
    ask(c, "go", "ok go 4");
    expect(c, "full 0 # 0");
    hold(c, "a", true);
    expect(c, "+ 1 # 0 2");
    hold(c, "d", true);
    expect(c, "+ 2 # 1 3");
    hold(c, "a", false);
    expect(c, "- 3 # 0 2");
    expect(c, "beat 3 # # 1");
    check(c->shortestSettle >= 28 * MICRO, "it waits as long as it said");
    dialogue_end(c);
}

static void measures_the_settle_past_a_pin_that_is_held_low(void) {
    controller *c = started("pin F4 row\npin B0 column\npin B1 other\nground row\nrise B1 39.7\n");
    ask(c, "settle auto", "no settle empty");
    ask(c, "add F4 B0", "ok add 2");
    ask(c, "settle auto", "ok settle 6");
    ask(c, "add B1", "ok add 3");
    ask(c, "settle auto", "ok settle 80");
    ask(c, "forget", "ok forget");
    ask(c, "add F4", "ok add 1");
    ask(c, "settle auto", "ok settle 5");
    dialogue_end(c);
}

int main(int count, char **words) {
    static const test TESTS[] = {
        TEST(tells_each_rise_within_a_turn_of_its_loop),
        TEST(tells_the_shortest_that_it_can_see),
        TEST(says_so_when_a_pin_does_not_rise),
        TEST(measures_listed_pins_only),
        TEST(measures_in_mid_sweep_and_changes_nothing),
        TEST(sees_ghosts_where_a_pin_rises_later_than_the_settle),
        TEST(sees_no_ghost_and_loses_nothing_with_a_settle_that_it_measured),
        TEST(measures_the_settle_past_a_pin_that_is_held_low),
    };
    return run_tests(count, words, TESTS, sizeof TESTS / sizeof *TESTS);
}
