#include "sweep.h"

#include <string.h>

#include "line.h"

using chip::Pin;
using chip::PORTS;
using chip::Reading;
using chip::Word;

static bool find(const char *name, Pin &pin) {
    for (uint8_t port = 0; port < PORTS; port++) {
        const chip::Port row = chip::portAt(port);
        uint8_t prefix = strlen(row.prefix);
        uint32_t number;
        if (strncmp(name, row.prefix, prefix) != 0 || !readNumber(name + prefix, 8 * sizeof(Word) - 1, number)) continue;
        pin = chip::pinAt(port, number);
        return row.offered & pin.bit;
    }
    return false;
}

Sweep::Refusal Sweep::add(const char *name) {
    Pin pin;
    if (!find(name, pin)) return NO_SUCH_PIN;
    if (listed.port[pin.port] & pin.bit) return TWICE;
    if (count == chip::MOST_PINS) return TOO_MANY;
    listed.port[pin.port] |= pin.bit;
    list[count++] = pin;
    chip::pullUp(pin);
    return NONE;
}

void Sweep::letGoFrom(uint8_t first) {
    while (count > first) {
        const Pin &pin = list[--count];
        chip::letGo(pin);
        listed.port[pin.port] &= ~pin.bit;
    }
}

uint16_t Sweep::measuredSettle() const {
    constexpr uint16_t LEAST = 5;
    uint16_t slowest = LEAST * chip::TICKS_PER_MICRO / 2;
    for (uint8_t pin = 0; pin < count; pin++) {
        uint16_t ticks = rise(pin);
        if (ticks > slowest && ticks <= LONGEST_RISE) slowest = ticks;
    }
    return (2 * slowest + chip::TICKS_PER_MICRO - 1) / chip::TICKS_PER_MICRO;
}

static bool silence() { return false; }

void Sweep::begin() {
    memset(state, 0xFF, sizeof state);
    for (uint8_t pin = 0; pin < count; pin++) state[pin].port[list[pin].port] &= ~list[pin].bit;  // it reads itself
    closedCount = 0;
    changes.clear();
    delayMicroseconds(1000);
    learning = true;
    run(silence);
    learning = false;
    sweepCount = 0;
}

/** Which listed pins read otherwise than before, all ports in one. Unrolled: it must be done before a pin has settled. */
template <uint8_t PORT>
__attribute__((always_inline)) static inline Word different(const Reading &now, const Reading &before, const Reading &listed) {
    return ((now.port[PORT] ^ before.port[PORT]) & listed.port[PORT]) | different<PORT + 1>(now, before, listed);
}
template <>
inline Word different<PORTS>(const Reading &, const Reading &, const Reading &) {
    return 0;
}

void Sweep::run(bool (*talk)()) {
    chip::stopLights();
    chip::pullUpAgain(listed);
    const uint16_t ticks = settleTicks;
    Reading now;
    const Pin *pin = list;
    const Reading *before = state;
    uint8_t left = count;
    // Only what stands between one pin's reading and the next pin's start adds to the settles. All else is done while a
    // pin settles: comparing what the last one read, serving the host, fetching the next one.
    Pin at = *pin;
    for (;;) {
        chip::driveLow(at);
        uint16_t end = chip::ticks() + ticks;
        if (left != count) {
            if (different<0>(now, *before, listed)) note(count - left - 1, now);
            before++;
        }
        if (talk()) {
            chip::stopLights();
            chip::pullUpAgain(listed);
            end = chip::ticks() + ticks;
        }
        Pin next = *++pin;
        while ((int16_t)(chip::ticks() - end) < 0) {
        }
        now = chip::readPorts();
        chip::pullUp(at);
        if (--left == 0) break;
        at = next;
    }
    if (different<0>(now, *before, listed)) note(count - 1, now);
    sweepCount++;
}

__attribute__((noinline)) void Sweep::note(uint8_t low, Reading now) {
    Reading &before = state[low];
    uint32_t stamp = micros();
    for (uint8_t reads = 0; reads < count; reads++) {
        const Pin &pin = list[reads];
        if (!((now.port[pin.port] ^ before.port[pin.port]) & pin.bit) || reads == low) continue;
        before.port[pin.port] ^= pin.bit;
        bool isClosed = !(before.port[pin.port] & pin.bit);
        closedCount += isClosed ? 1 : -1;
        if (!learning) changes.add({stamp, low, reads, isClosed});
    }
}
