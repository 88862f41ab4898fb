#include "sweep.h"

#include <string.h>

#include "line.h"

using chip::Pin;
using chip::PORTS;
using chip::Word;

static bool find(const char *name, Pin &pin) {
    for (uint8_t port = 0; port < PORTS; port++) {
        chip::Port row;
        memcpy_P(&row, &chip::TABLE[port], sizeof row);
        uint8_t prefix = strlen(row.prefix);
        uint32_t number;
        if (strncmp(name, row.prefix, prefix) != 0 || !readNumber(name + prefix, 8 * sizeof(Word) - 1, number)) continue;
        pin = {(volatile Word *)row.pinRegister, (Word)((Word)1 << number), port};
        return row.offered & pin.bit;
    }
    return false;
}

Sweep::Refusal Sweep::add(const char *name) {
    Pin pin;
    if (!find(name, pin)) return NO_SUCH_PIN;
    if (listed[pin.port] & pin.bit) return TWICE;
    if (count == chip::MOST_PINS) return TOO_MANY;
    listed[pin.port] |= pin.bit;
    list[count++] = pin;
    chip::pullUp(pin);
    return NONE;
}

void Sweep::letGoFrom(uint8_t first) {
    while (count > first) {
        const Pin &pin = list[--count];
        chip::letGo(pin);
        listed[pin.port] &= ~pin.bit;
    }
}

static bool silence() { return false; }

void Sweep::begin() {
    memset(state, 0xFF, sizeof state);
    closedCount = 0;
    changes.clear();
    delayMicroseconds(1000);
    learning = true;
    run(silence);
    learning = false;
    sweepCount = 0;
}

void Sweep::run(bool (*talk)()) {
    chip::stopLights();
    chip::pullUpAgain(listed);
    uint8_t low = 0;
    chip::driveLow(list[0]);
    for (;;) {
        // What the last pin read is compared, and the host served, while this one settles.
        uint16_t start = chip::ticks();
        if (low > 0) compare(low - 1);
        if (talk()) {
            chip::stopLights();
            chip::pullUpAgain(listed);
            start = chip::ticks();
        }
        while ((uint16_t)(chip::ticks() - start) < settleTicks) {
        }
        chip::readPorts(now);
        chip::pullUp(list[low]);
        if (++low == count) break;
        chip::driveLow(list[low]);
    }
    compare(low - 1);
    sweepCount++;
}

inline void Sweep::compare(uint8_t low) {
    const Word *before = state[low];
    for (uint8_t port = 0; port < PORTS; port++) {
        Word changed = (now[port] ^ before[port]) & listed[port];
        if (changed) note(low, port, changed);
    }
}

void Sweep::note(uint8_t low, uint8_t port, Word changed) {
    state[low][port] ^= changed;
    for (uint8_t reads = 0; reads < count; reads++) {
        if (reads == low || list[reads].port != port || !(list[reads].bit & changed)) continue;
        bool isClosed = closed(low, reads);
        closedCount += isClosed ? 1 : -1;
        if (!learning) changes.add({micros(), low, reads, isClosed});
    }
}
