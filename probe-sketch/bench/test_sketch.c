// Runs the compiled sketch in simulated time and asserts what it says, word for word. In an expected line # stands for
// any number, which is used for time stamps only.
//   test_sketch SKETCH.elf [WORDS OF A TEST'S NAME]
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "dialogue.h"

static const char *elf;
static const char *testing;
static int failures;

// Two rows and two columns; the current of every key enters by its column and leaves by its row.
static const char SQUARE[] =
    "pin F4 row0\npin F5 row1\npin B0 column0\npin B1 column1\n"
    "switch a column0 ia\ndiode ia row0\nswitch b column1 ib\ndiode ib row0\n"
    "switch c column0 ic\ndiode ic row1\nswitch d column1 id\ndiode id row1\n";

static void fail(const char *what, const char *got, const char *wanted) {
    printf("FAILED %s: %s\n  got    %s\n  wanted %s\n", testing, what, got ? got : "nothing", wanted);
    failures++;
}

static bool matches(const char *line, const char *pattern) {
    for (; *pattern; pattern++) {
        if (*pattern == '#') {
            if (*line < '0' || *line > '9') return false;
            while (*line >= '0' && *line <= '9') line++;
        } else if (*line++ != *pattern) {
            return false;
        }
    }
    return *line == 0;
}

/** The next line but beats is this. */
static void expect(controller *c, const char *pattern) {
    const char *line;
    do {
        line = next_line(c);
    } while (line != NULL && strncmp(line, "beat ", 5) == 0 && strncmp(pattern, "beat ", 5) != 0);
    if (line == NULL || !matches(line, pattern)) fail("a line", line, pattern);
}

static void ask(controller *c, const char *body, const char *answer) {
    tell(c, body);
    expect(c, answer);
}

/** For so long nothing comes but beats. */
static void expect_silence(controller *c, int millis) {
    pass(c, (avr_cycle_count_t)millis * MILLI);
    tell(c, "settle 10");
    expect(c, "ok settle 10");
}

static void check(bool holds, const char *what) {
    if (!holds) fail(what, "false", "true");
}

static controller *started(const char *wiring) {
    controller *c = dialogue_start(elf, wiring);
    expect(c, "iam 1 0.1.0 ATmega32U4 24 16000000");
    return c;
}

/** A sketch that sweeps the square, with the lines of its first state read. */
static controller *sweeping_square(void) {
    controller *c = started(SQUARE);
    ask(c, "add F4 F5 B0 B1", "ok add 4");
    ask(c, "go", "ok go 4");
    expect(c, "full 0 # 0");
    return c;
}

static void says_who_it_is_at_start_and_when_asked(void) {
    controller *c = started(SQUARE);
    ask(c, "who 1", "iam 1 0.1.0 ATmega32U4 24 16000000");
    ask(c, "who 7", "iam 1 0.1.0 ATmega32U4 24 16000000");
    ask(c, "who 0", "no who version");
    ask(c, "who one", "no who version");
    ask(c, "who", "no who fields");
    ask(c, "who 1 2", "no who fields");
    dialogue_end(c);
}

static void checks_lines_by_the_published_crc(void) {
    controller *c = started(SQUARE);
    check(crc_of("123456789") == 0x31C3, "our own CRC has the published check value");
    tell_bytes(c, "123456789*31C3\n", 15);
    expect(c, "no ? verb");
    tell_bytes(c, "123456789*31C4\n", 15);
    expect(c, "no ? crc");
    tell_bytes(c, "123456789*31c3\n", 15);
    expect(c, "no ? crc");
    tell_bytes(c, "123456789*31C3\r\n", 16);
    expect(c, "no ? verb");
    tell_bytes(c, "\n\r\n\n", 4);
    expect_silence(c, 20);
    dialogue_end(c);
}

static void takes_pins_by_name_and_refuses_others(void) {
    controller *c = started(SQUARE);
    ask(c, "go", "no go empty");
    ask(c, "add", "no add fields");
    ask(c, "add F4 F5", "ok add 2");
    ask(c, "add B0 F4", "no add twice F4");
    ask(c, "add B0 B0", "no add twice B0");
    ask(c, "add B0 F9", "no add pin F9");
    ask(c, "add F2", "no add pin F2");
    ask(c, "add D3", "no add pin D3");
    ask(c, "add B00", "no add pin B00");
    ask(c, "add b0", "no add pin b0");
    ask(c, "add GPIO12", "no add pin GPIO12");
    ask(c, "add B0 ", "no ? fields");
    ask(c, "add  B0", "no ? fields");
    ask(c, "add B0", "ok add 3");
    ask(c, "forget", "ok forget");
    ask(c, "add B0 B1 B2 B3 B4 B5 B6 B7 C6 C7 D0 D1 D4 D5 D6 D7 E2 E6 F0 F1 F4 F5 F6 F7", "ok add 24");
    ask(c, "forget", "ok forget");
    ask(c, "add B0", "ok add 1");
    dialogue_end(c);
}

static void keeps_the_settle_in_range(void) {
    controller *c = started(SQUARE);
    ask(c, "settle 1", "ok settle 1");
    ask(c, "settle 1000", "ok settle 1000");
    ask(c, "settle 0", "no settle range");
    ask(c, "settle 1001", "no settle range");
    ask(c, "settle -5", "no settle range");
    ask(c, "settle 05", "no settle range");
    ask(c, "settle 99999999999999", "no settle range");
    ask(c, "settle", "no settle fields");
    dialogue_end(c);
}

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
    controller *c = sweeping_square();
    long first = 0;
    for (int i = 0; i < 50; i++) {
        pass(c, 7 * MILLI + (avr_cycle_count_t)i * 37);
        hold(c, "a", i % 2 == 0);
        avr_cycle_count_t when = c->avr->cycle;
        const char *line = next_line(c);
        while (line != NULL && line[0] == 'b') line = next_line(c);
        unsigned long seq = 0, micros = 0;
        check(line != NULL && sscanf(line + 2, "%lu %lu", &seq, &micros) == 2, "a change");
        long late = (long)(micros - when / MICRO);
        // The probe's clock began at its own zero. A sweep of four pins takes 80 microseconds, and stamps count in fours.
        if (i == 0) first = late;
        check(labs(late - first) <= 80 + 4, "the stamp is of the sweep that saw the change");
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

static void follows_orders_in_any_order(void) {
    controller *c = started(SQUARE);
    ask(c, "state", "no state stopped");
    ask(c, "stop", "ok stop");
    ask(c, "add F4 B0", "ok add 2");
    ask(c, "go", "ok go 2");
    expect(c, "full 0 # 0");
    ask(c, "add F5", "no add sweeping");
    ask(c, "go now", "no go fields");
    hold(c, "a", true);
    expect(c, "+ 1 # 0 1");
    ask(c, "go", "ok go 2");
    expect(c, "= 0 1");
    expect(c, "full 0 # 1");
    ask(c, "stop", "ok stop");
    hold(c, "a", false);
    pass(c, 600 * MILLI);
    ask(c, "who 1", "iam 1 0.1.0 ATmega32U4 24 16000000");
    ask(c, "add F5", "ok add 3");
    ask(c, "go", "ok go 3");
    expect(c, "full 0 # 0");
    ask(c, "forget", "ok forget");
    ask(c, "go", "no go empty");
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

static void answers_after_garbage(void) {
    controller *c = sweeping_square();
    uint32_t seed = 20260101;
    printf("  garbage seed %u\n", seed);
    char noise[64];
    for (int block = 0; block < 125; block++) {
        for (size_t i = 0; i < sizeof noise; i++) {
            seed = seed * 1664525 + 1013904223;
            noise[i] = (char)(seed >> 24);
        }
        tell_bytes(c, noise, sizeof noise);
    }
    pass(c, 100 * MILLI);
    tell_bytes(c, "\n", 1);
    pass(c, 100 * MILLI);
    int refused = 0;
    skip_lines(c);
    tell_bytes(c, "\x1b[2J\x07 go*FFFF\n", 14);
    for (const char *line = next_line(c); line != NULL; line = next_line(c)) {
        if (strncmp(line, "beat", 4) == 0) continue;
        refused += matches(line, "no ? crc");
        break;
    }
    check(refused == 1, "control characters are refused");
    ask(c, "who 1", "iam 1 0.1.0 ATmega32U4 24 16000000");
    hold(c, "c", true);
    expect(c, "+ # # 1 2");
    check(bad_lines() == 0, "every line it ever sent was whole");
    dialogue_end(c);
}

static void refuses_a_line_that_is_too_long(void) {
    controller *c = started(SQUARE);
    char line[300];
    memset(line, 'x', sizeof line);
    line[299] = '\n';
    tell_bytes(c, line, sizeof line);
    expect(c, "no ? long");
    // 96 bytes are allowed: a body of 91. One more is too long.
    char body[100];
    memset(body, 'x', sizeof body);
    body[91] = 0;
    ask(c, body, "no ? verb");
    body[91] = 'x', body[92] = 0;
    ask(c, body, "no ? long");
    ask(c, "who 1", "iam 1 0.1.0 ATmega32U4 24 16000000");
    dialogue_end(c);
}

static void says_nothing_to_its_own_echo(void) {
    controller *c = started(SQUARE);
    static const char *const ECHOES[] = {"iam 1 0.1.0 ATmega32U4 24 16000000", "ok go 4", "no ? crc", "= 0 1",
                                         "full 0 1 0", "+ 1 1 0 1", "- 1 1 0 1", "beat 1 1 1 1", "lost 5 5"};
    for (int i = 0; i < 9; i++) {
        tell(c, ECHOES[i]);
        pass(c, 5 * MILLI);
    }
    expect_silence(c, 20);
    ask(c, "dance", "no ? verb");
    dialogue_end(c);
}

static void starts_anew_after_a_reset(void) {
    controller *c = sweeping_square();
    hold(c, "a", true);
    expect(c, "+ 1 # 0 2");
    controller_reset(c);
    expect(c, "iam 1 0.1.0 ATmega32U4 24 16000000");
    ask(c, "state", "no state stopped");
    ask(c, "go", "no go empty");
    ask(c, "add F4 F5 B0 B1", "ok add 4");
    ask(c, "go", "ok go 4");
    expect(c, "= 0 2");
    expect(c, "full 0 # 1");
    dialogue_end(c);
}

/** Follows the sketch's reports as a host does, and ends with what it believes. */
typedef struct {
    bool closed[8][8], gathered[8][8];
    unsigned long seq, lost, full, changes;
    bool wrong;
} belief;

static void believe(belief *b, const char *line) {
    unsigned long seq, micros, count;
    unsigned low, reads;
    if (sscanf(line, "= %u %u", &low, &reads) == 2) {
        b->gathered[low][reads] = true;
    } else if (sscanf(line, "full %lu %lu %lu", &seq, &micros, &count) == 3) {
        if (seq != b->seq) b->wrong = true;
        unsigned long closed = 0;
        for (int i = 0; i < 64; i++) closed += b->gathered[i / 8][i % 8];
        if (closed != count) b->wrong = true;
        memcpy(b->closed, b->gathered, sizeof b->closed);
        memset(b->gathered, 0, sizeof b->gathered);
        b->full++;
    } else if (sscanf(line, "lost %lu %lu", &seq, &count) == 2) {
        if (seq != b->seq + count) b->wrong = true;
        b->seq = seq;
        b->lost += count;
    } else if ((line[0] == '+' || line[0] == '-') && sscanf(line + 2, "%lu %lu %u %u", &seq, &micros, &low, &reads) == 4) {
        if (seq != b->seq + 1 || b->closed[low][reads] == (line[0] == '+')) b->wrong = true;
        b->seq = seq;
        b->closed[low][reads] = line[0] == '+';
        b->changes++;
    } else if (sscanf(line, "beat %lu %lu %*u %lu", &seq, &micros, &count) == 3) {
        unsigned long closed = 0;
        for (int i = 0; i < 64; i++) closed += b->closed[i / 8][i % 8];
        if (seq != b->seq || closed != count) b->wrong = true;
    }
}

/** Believes all lines until only beats come. */
static void believe_all(controller *c, belief *b) {
    const char *line;
    for (int beats = 0; beats < 3 && (line = next_line(c)) != NULL;) {
        believe(b, line);
        beats = strncmp(line, "beat", 4) == 0 ? beats + 1 : 0;
    }
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

typedef struct {
    const char *name;
    void (*run)(void);
} test;
#define TEST(name) {#name, name}

static const test TESTS[] = {
    TEST(says_who_it_is_at_start_and_when_asked),
    TEST(checks_lines_by_the_published_crc),
    TEST(takes_pins_by_name_and_refuses_others),
    TEST(keeps_the_settle_in_range),
    TEST(waits_the_settle_before_it_reads),
    TEST(begins_with_the_whole_state),
    TEST(reports_presses_and_releases),
    TEST(stamps_changes_within_a_sweep),
    TEST(sees_a_reversed_diode_a_bypassed_one_and_a_bridge),
    TEST(follows_orders_in_any_order),
    TEST(beats_four_times_a_second),
    TEST(answers_after_garbage),
    TEST(refuses_a_line_that_is_too_long),
    TEST(says_nothing_to_its_own_echo),
    TEST(starts_anew_after_a_reset),
    TEST(owns_up_when_changes_were_lost),
    TEST(loses_nothing_while_a_key_bounces),
    TEST(turns_jtag_off),
    TEST(drives_one_pin_at_a_time_and_only_low),
};

int main(int count, char **words) {
    if (count < 2) return fprintf(stderr, "use: test_sketch SKETCH.elf [PART OF A NAME]\n"), 2;
    elf = words[1];
    int run = 0;
    for (size_t i = 0; i < sizeof TESTS / sizeof *TESTS; i++) {
        if (count > 2 && strstr(TESTS[i].name, words[2]) == NULL) continue;
        int before = failures;
        testing = TESTS[i].name;
        printf("%s\n", testing);
        fflush(stdout);
        TESTS[i].run();
        run++;
        if (failures > before) printf("  %d failures\n", failures - before);
    }
    printf("%d tests of the sketch, %d failures\n", run, failures);
    if (failures > 0 || run == 0) return 1;
    puts("sketch: all good");
    return 0;
}
