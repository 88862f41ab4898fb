// Stands where chip.h does when the sketch's talk is fuzzed on a PC: two ports in memory, and a clock that runs by itself.
#pragma once
#include <stdint.h>
#include <string.h>

#include <string>

#define PSTR(text) (text)
#define CHIP_NAME "host"
#define F_CPU 16000000UL
#define PROBE_SERIAL hostSerial

/** What the host sends, and what it got; it takes few bytes at once. */
struct HostSerial {
    std::string toProbe, fromProbe;
    size_t taken;
    void begin(unsigned long) {}
    int available() const { return (int)(toProbe.size() - taken); }
    int read() { return (unsigned char)toProbe[taken++]; }
    int availableForWrite() const { return 7; }
    void write(uint8_t byte) { fromProbe += (char)byte; }
};
extern HostSerial hostSerial;
extern uint32_t hostMicros, hostNoise, hostBusy;

inline uint32_t micros() { return hostMicros += 40; }
inline uint32_t millis() { return micros() / 1000; }
inline void delayMicroseconds(unsigned time) { hostMicros += time; }

namespace chip {
typedef uint8_t Word;
constexpr uint8_t PORTS = 2;
constexpr uint8_t MOST_PINS = 10;
constexpr uint16_t SETTLE_MICROS = 10, TICKS_PER_MICRO = 16, TICKS_UNSEEN = 8;

struct Port {
    char prefix[5];
    Word offered;
};
struct Reading {
    Word port[PORTS];
};
struct Pin {
    uint8_t port;
    Word bit;
};
inline Port portAt(uint8_t port) {
    static const Port TABLE[PORTS] = {{"D", 0xFF}, {"GPIO", 0x81}};
    return TABLE[port];
}
inline Pin pinAt(uint8_t port, uint8_t number) { return {port, (Word)(1 << number)}; }
inline void begin() {}
inline void stopLights() {}
inline void pullUp(const Pin &) {}
inline void driveLow(const Pin &) {}
inline void letGo(const Pin &) {}
inline void pullUpAgain(const Reading &) {}
inline uint16_t rise(Pin pin, uint16_t most) { return pin.bit & 0x10 ? most + 1 : pin.bit; }
inline uint16_t ticks() { return (uint16_t)(micros() * TICKS_PER_MICRO); }

/** Of 16 readings, hostBusy have some pin otherwise. */
inline Reading readPorts() {
    static const Word ONES = 0xFF;
    hostNoise = hostNoise * 1664525 + 1013904223;
    Reading now = {{ONES, ONES}};
    if (hostNoise >> 28 < hostBusy) now.port[hostNoise >> 27 & 1] ^= (Word)(1 << (hostNoise >> 24 & 7));
    return now;
}
}  // namespace chip
