// The host's end of the simulated USB: enough of it to enumerate the sketch's serial port and move its bytes.
#pragma once
#include "controller.h"

/** Plugs in and configures; never sets DTR or RTS, which a probe must not need. */
void usb_plug(controller *c);

/** Runs until the given cycle, with a frame each millisecond, fetching packets while reading is on. */
void usb_run(controller *c, avr_cycle_count_t until, bool reading);

/** Hands the sketch up to 64 bytes as one packet; false while it has no room for one. */
bool usb_send(controller *c, const char *bytes, size_t count);
