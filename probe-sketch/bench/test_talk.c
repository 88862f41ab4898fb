// Runs the compiled sketch in simulated time: what it answers, to sense and to nonsense.
#include "expect.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

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
    skip_lines(c);
    tell_bytes(c, "\x1b[2J\x07 go*FFFF\n", 14);
    expect(c, "no ? crc");
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

int main(int count, char **words) {
    static const test TESTS[] = {
        TEST(says_who_it_is_at_start_and_when_asked),
        TEST(checks_lines_by_the_published_crc),
        TEST(takes_pins_by_name_and_refuses_others),
        TEST(keeps_the_settle_in_range),
        TEST(follows_orders_in_any_order),
        TEST(answers_after_garbage),
        TEST(refuses_a_line_that_is_too_long),
        TEST(says_nothing_to_its_own_echo),
        TEST(starts_anew_after_a_reset),
    };
    return run_tests(count, words, TESTS, sizeof TESTS / sizeof *TESTS);
}
