// What the tests of the sketch share: saying what should come, and being told what came instead. In an expected line #
// stands for any number, which is used for time stamps only.
#pragma once
#include "dialogue.h"

enum { USART_PINS = 24, USB_PINS = 26 };

/** Two rows and two columns on F4, F5, B0, B1; the current of keys a to d enters by the column and leaves by the row. */
extern const char SQUARE[];

void check(bool holds, const char *what);

/** The next line but beats is this. */
void expect(controller *c, const char *pattern);
bool matches(const char *line, const char *pattern);
void ask(controller *c, const char *body, const char *answer);

/** Nothing comes for so long but beats. */
void expect_silence(controller *c, int millis);

/** A sketch that has said who it is; and one that sweeps the square and has told its first state. */
controller *started(const char *wiring);
controller *sweeping_square(void);

typedef struct {
    const char *name;
    void (*run)(void);
} test;
#define TEST(name) {#name, name}

/** Runs all tests, or those whose name holds the words given; the program's exit status. `all good` comes last. */
int run_tests(int count, char **words, const test *tests, size_t number);

/** Where the compiled sketch is. */
const char *sketch(void);

/** Follows the sketch's reports as a host does. Pins are numbered below 26. */
typedef struct {
    bool closed[USB_PINS][USB_PINS], gathered[USB_PINS][USB_PINS];
    unsigned long seq, lost, full, changes;
    bool wrong;  // the reports have contradicted each other
} belief;

/** Believes all lines until only beats come. */
void believe_all(controller *c, belief *b);
