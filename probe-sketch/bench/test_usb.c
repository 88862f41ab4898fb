// Runs the sketch as it is flashed into an ATmega32U4, over the simulated USB, with a host that never sets DTR.
#include <stdio.h>
#include <string.h>

#include "expect.h"

// D5 is where the AVR core has one of its USB lights. With two pins it is driven half of the time.
static const char LIGHT[] = "pin F4 row\npin D5 column\nswitch a column inside\ndiode inside row\n";

static controller *plugged(const char *wiring) {
    controller *c = dialogue_start(sketch(), wiring);
    over_usb(c);
    expect(c, "iam 1 0.1.0 ATmega32U4 26 16000000");
    return c;
}

static void offers_all_pins_over_usb(void) {
    controller *c = plugged(SQUARE);
    ask(c, "who 1", "iam 1 0.1.0 ATmega32U4 26 16000000");
    ask(c, "add B0 B1 B2 B3 B4 B5 B6 B7 C6 C7 D0 D1 D2 D3 D4 D5 D6 D7 E2 E6 F0 F1 F4 F5 F6 F7", "ok add 26");
    ask(c, "go", "ok go 26");
    expect(c, "full 0 # 0");
    hold(c, "d", true);
    expect(c, "+ 1 # 23 1");
    dialogue_end(c);
}

static void loses_nothing_while_a_key_bounces_at_one_kilohertz(void) {
    controller *c = plugged(SQUARE);
    belief b = {0};
    ask(c, "add F4 F5 B0 B1 B2 B3 B4 B5 B6 B7 C6 C7 D0 D1 D2 D3", "ok add 16");
    ask(c, "go", "ok go 16");
    expect(c, "full 0 # 0");
    for (int i = 0; i < 4000; i++) {
        hold(c, "a", i % 2 == 0);
        pass(c, 500 * MICRO);
    }
    believe_all(c, &b);
    printf("  of 4000 changes %lu were seen, %lu lost\n", b.changes, b.lost);
    check(b.lost == 0, "nothing is lost");
    check(b.changes == 4000, "every change is sent");
    check(!b.wrong, "in order");
    dialogue_end(c);
}

static void goes_on_without_a_host_and_makes_up_for_it(void) {
    controller *c = plugged(SQUARE);
    belief b = {0};
    ask(c, "add F4 F5 B0 B1", "ok add 4");
    ask(c, "go", "ok go 4");
    expect(c, "full 0 # 0");
    listen_to_usb(false);
    for (int i = 0; i < 301; i++) {
        uint64_t before = controller_sweeps(c);
        hold(c, "c", i % 2 == 0);
        pass(c, 10 * MILLI);
        if (controller_sweeps(c) < before + 50) {
            check(false, "it sweeps while nobody listens");
            break;
        }
    }
    listen_to_usb(true);
    believe_all(c, &b);
    check(b.lost > 100, "it says that changes were lost");
    check(b.seq == 301, "and how many there were");
    check(b.full == 1 && b.closed[1][2], "and what is closed now");
    check(!b.wrong, "without contradicting itself");
    ask(c, "who 1", "iam 1 0.1.0 ATmega32U4 26 16000000");
    dialogue_end(c);
}

static void keeps_the_lights_of_the_core_off_its_pins(void) {
    controller *c = plugged(LIGHT);
    belief b = {0};
    ask(c, "add F4 D5", "ok add 2");
    ask(c, "go", "ok go 2");
    expect(c, "full 0 # 0");
    c->drivenHigh = c->drivenTogether = 0;
    for (int i = 0; i < 400; i++) {
        hold(c, "a", i % 2 == 0);
        tell(c, "settle 10");
        pass(c, 2 * MILLI);
    }
    believe_all(c, &b);
    check(b.changes == 400 && !b.wrong, "nothing but the key is reported");
    pass(c, 8000 * MILLI);  // the core puts its lights out, by driving high, 100 ms after each beat
    check(c->drivenHigh == 0, "no pin is driven high");
    check(c->drivenTogether == 0, "no two pins are driven at once");
    dialogue_end(c);
}

int main(int count, char **words) {
    static const test TESTS[] = {
        TEST(offers_all_pins_over_usb),
        TEST(loses_nothing_while_a_key_bounces_at_one_kilohertz),
        TEST(goes_on_without_a_host_and_makes_up_for_it),
        TEST(keeps_the_lights_of_the_core_off_its_pins),
    };
    return run_tests(count, words, TESTS, sizeof TESTS / sizeof *TESTS);
}
