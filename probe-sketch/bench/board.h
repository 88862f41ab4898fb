// The wired matrix on the simulated controller's pins: what conducts, for the switches that are pressed now.
#pragma once
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

enum { PORTS = 12, PINS = PORTS * 8 };  // ports A to L; a pin's number is port * 8 + bit

/** One bit for each pin. */
typedef struct {
    uint8_t port[PORTS];
} pins;

typedef struct board board;

/**
 * Reads a wiring file. A pin behind two or more diodes, or beside a LED, reads low or high as betweenReadsLow says.
 * Returns NULL after writing `file:line: what is wrong` into error.
 */
board *board_read(const char *path, bool betweenReadsLow, char *error, size_t size);
void board_free(board *b);

/** Presses or releases a key; false when the board has none of that name. */
bool board_press(board *b, const char *key, bool pressed);
/** Holds the keys that are held on another board, as far as it has them. */
void board_hold_like(board *b, const board *other);
bool board_has(const board *b, const char *key);
bool board_pressed(const board *b, const char *key);

/** Holds the flying lead of the spare pin against the joint of a net at a key; false when the board has none. */
bool board_touch(board *b, const char *net, const char *key);
void board_lift(board *b);

/** The pins that read low while one pin is driven low, and those that do whatever is driven. */
const pins *board_low(const board *b, int driven);
const pins *board_grounded(const board *b);

/** How many microseconds a pin reads low after nothing pulls it down any more, or less than 0 where the file does not say. */
double board_rise(const board *b, int pin);

/** A pin's number by its data-sheet name, such as F4, or -1. */
int pin_number(const char *name);
