// Everything that differs from one microcontroller to the next. Another chip is one more table, and for another
// family its own handful of functions below; nothing else in the sketch names a register.
#pragma once
#include <Arduino.h>

#ifndef PROBE_SERIAL
#define PROBE_SERIAL Serial
#endif

namespace chip {
/** One port's pins, one bit each. */
typedef uint8_t Word;
}  // namespace chip

// The pins that the sketch's own serial port needs are not offered: TAKEN(D) are those on port D. A serial port that a
// chip's table does not know stops the build here instead of fighting over pins later.
#define TAKEN_NAMED(serial, port) TAKEN_##serial##_##port
#define TAKEN_BY(serial, port) TAKEN_NAMED(serial, port)
#ifdef PROBE_COUNTS_CYCLES  // only the simulator may do without its serial pins
#define TAKEN(port) 0
#else
#define TAKEN(port) TAKEN_BY(PROBE_SERIAL, port)
#endif

// The tables: each port's letter and which of its pins are offered.
#if defined(__AVR_ATmega32U4__)
#define CHIP_NAME "ATmega32U4"
#define TAKEN_Serial_D 0x00   // USB has pins of its own
#define TAKEN_Serial1_D 0x0C  // D2 receives, D3 sends
#define CHIP_PORTS(PORT) PORT(B, 0xFF) PORT(C, 0xC0) PORT(D, 0xFF & ~TAKEN(D)) PORT(E, 0x44) PORT(F, 0xF3)
#elif defined(__AVR_ATmega328P__)
#define CHIP_NAME "ATmega328P"
#define TAKEN_Serial_D 0x03  // D0 receives, D1 sends
// B6 and B7 carry the crystal, C6 is the reset.
#define CHIP_PORTS(PORT) PORT(B, 0x3F) PORT(C, 0x3F) PORT(D, 0xFF & ~TAKEN(D))
#elif defined(__AVR_ATmega2560__)
#define CHIP_NAME "ATmega2560"
#define TAKEN_Serial_E 0x03  // E0 receives, E1 sends
#define CHIP_PORTS(PORT)                                                                                    \
    PORT(A, 0xFF) PORT(B, 0xFF) PORT(C, 0xFF) PORT(D, 0xFF) PORT(E, 0xFF & ~TAKEN(E)) PORT(F, 0xFF)         \
    PORT(G, 0x3F) PORT(H, 0xFF) PORT(J, 0xFF) PORT(K, 0xFF) PORT(L, 0xFF)
#else
#error "chip.h has no table for this microcontroller yet"
#endif

namespace chip {
constexpr uint8_t ones(uint8_t bits) { return bits == 0 ? 0 : (bits & 1) + ones(bits >> 1); }

#define PORT(letter, offered) +1
constexpr uint8_t PORTS = 0 CHIP_PORTS(PORT);
#undef PORT
#define PORT(letter, offered) +ones(offered)
constexpr uint8_t MOST_PINS = 0 CHIP_PORTS(PORT);
#undef PORT

/** A port: how its pins' names begin, which are offered, and where its PIN register is; DDR and PORT follow it on every AVR. */
struct Port {
    char prefix[5];
    Word offered;
    uint16_t pinRegister;
};
extern const Port TABLE[PORTS];  // in flash

/** A bit for each pin, port by port. */
struct Reading {
    Word port[PORTS];
};

inline Port portAt(uint8_t port) {
    Port row;
    memcpy_P(&row, &TABLE[port], sizeof row);
    return row;
}

struct Pin {
    volatile Word *pinRegister;
    Word bit;
    uint8_t port;
};
inline Pin pinAt(uint8_t port, uint8_t number) {
    return {(volatile Word *)portAt(port).pinRegister, (Word)((Word)1 << number), port};
}

/** Ready for sweeping: full clock, JTAG off its pins, every offered pin an input, the tick counter running. */
void begin();

/** Stops the core's USB lights, which would drive two of the pins high behind the sketch's back. */
void stopLights();

// Going low passes through a floating input, never through a driven high, and so does coming back. Always inline: in the
// sweep each call would cost dearly.
__attribute__((always_inline)) inline void pullUp(const Pin &pin) {
    pin.pinRegister[1] &= ~pin.bit;
    pin.pinRegister[2] |= pin.bit;
}
__attribute__((always_inline)) inline void driveLow(const Pin &pin) {
    pin.pinRegister[2] &= ~pin.bit;
    pin.pinRegister[1] |= pin.bit;
}
inline void letGo(const Pin &pin) {
    pin.pinRegister[1] &= ~pin.bit;
    pin.pinRegister[2] &= ~pin.bit;
}

/** Pulls the listed pins of each port up, all but one that is driven at the moment. */
inline void pullUpAgain(const Reading &listed) {
    const Word *next = listed.port;
#define PORT(letter, offered) PORT##letter |= *next++ & ~DDR##letter;
    CHIP_PORTS(PORT)
#undef PORT
}

/** Reads all ports, as close to at once as the chip can. */
inline Reading readPorts() {
#define PORT(letter, offered) PIN##letter,
    return {{CHIP_PORTS(PORT)}};
#undef PORT
}

/** How long a pin takes to settle unless the host knows better (15 at 3.3 V, which is what slow AVRs run at). */
constexpr uint16_t SETTLE_MICROS = F_CPU <= 8000000UL ? 15 : 10;

/** A free-running counter, for waits of up to 2 ms at 16 MHz. */
inline uint16_t ticks() { return TCNT1; }
constexpr uint16_t TICKS_PER_MICRO = F_CPU / 1000000UL;
// A pin is driven at least so much before ticks() can be asked, and read so much after: a part of its settle.
constexpr uint16_t TICKS_UNSEEN = 8;

/** How many ticks a pin takes to read high after it was held low and let go; more than the given most when it does not. */
uint16_t rise(Pin pin, uint16_t most);
}  // namespace chip
