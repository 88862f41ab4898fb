// Prints what a sweep costs on the ATmega32U4, beside its floor of pins times settle.
//   cycles SKETCH.elf, built so that its serial pins are offered too
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "dialogue.h"

static const char *const ALL[] = {"B0", "B1", "B2", "B3", "B4", "B5", "B6", "B7", "C6", "C7", "D0", "D1", "D2",
                                  "D3", "D4", "D5", "D6", "D7", "E2", "E6", "F0", "F1", "F4", "F5", "F6", "F7"};
enum { SWEEPS = 2000, SETTLE = 10 };
static const double CLOCK = 16e6;

static int by_size(const void *one, const void *other) {
    avr_cycle_count_t a = *(const avr_cycle_count_t *)one, b = *(const avr_cycle_count_t *)other;
    return (a > b) - (a < b);
}

static void count(const char *elf, int pins) {
    controller *c = dialogue_start(elf, "");
    pass(c, 100 * MILLI);
    for (int i = 0; i < pins; i++) {
        char add[8];
        snprintf(add, sizeof add, "add %s", ALL[i]);
        tell(c, add);
        next_line(c);
    }
    tell(c, "go");
    pass(c, 100 * MILLI);
    static avr_cycle_count_t cost[SWEEPS];
    avr_cycle_count_t last = 0;
    for (int sweeps = -1; sweeps < SWEEPS;) {
        pass(c, 1);
        avr_cycle_count_t start = c->lastDrive[pin_number("B0")];
        if (start == last) continue;
        if (sweeps >= 0) cost[sweeps] = start - last;
        sweeps++;
        last = start;
    }
    qsort(cost, SWEEPS, sizeof *cost, by_size);
    double floor = pins * SETTLE * (double)MICRO;
    printf("%d pins: floor %.0f cycles; a sweep takes %llu (median), %llu (99 %%), %llu (most): %.2f times the floor, "
           "%.0f sweeps a second; shortest settle %llu cycles\n",
           pins, floor, (unsigned long long)cost[SWEEPS / 2], (unsigned long long)cost[SWEEPS * 99 / 100],
           (unsigned long long)cost[SWEEPS - 1], (double)cost[SWEEPS / 2] / floor, CLOCK / (double)cost[SWEEPS / 2],
           (unsigned long long)c->shortestSettle);
    dialogue_end(c);
}

int main(int arguments, char **words) {
    if (arguments != 2) return fprintf(stderr, "use: cycles SKETCH.elf\n"), 2;
    count(words[1], 4);
    count(words[1], 20);
    count(words[1], 26);
    return 0;
}
