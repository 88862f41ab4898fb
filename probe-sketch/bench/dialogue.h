// A host's side of the line protocol, for tests that talk to the simulated sketch in simulated time.
#pragma once
#include "controller.h"

enum { MICRO = 16, MILLI = 16000, LONGEST = 200 };  // cycles; bytes

uint16_t crc_of(const char *body);

/** Starts the sketch on the board that a wiring text describes. Ends the program with a message when it cannot. */
controller *dialogue_start(const char *elf, const char *wiring);
void dialogue_end(controller *c);

/** From now on the dialogue goes over USB instead of USART1; the host may stop listening and begin again. */
void over_usb(controller *c);
void listen_to_usb(bool listen);

/** Sends a body as a line; sends bytes as they are; both while time passes. */
void tell(controller *c, const char *body);
void tell_bytes(controller *c, const char *bytes, size_t count);

/** Lets simulated time pass; what arrives is kept. */
void pass(controller *c, avr_cycle_count_t cycles);

/** Presses or releases a key, and keeps what arrives. */
void hold(controller *c, const char *key, bool pressed);

/** The body of the next line, waiting up to a second for it; NULL when none came. Counts lines that are no lines. */
const char *next_line(controller *c);

/** Throws away what has arrived. */
void skip_lines(controller *c);

/** Lines with a wrong CRC that were received so far. */
int bad_lines(void);
