#include "chip.h"

#include <avr/power.h>
#include <util/delay_basic.h>
#include <util/atomic.h>

#ifdef USBCON
// For how many milliseconds more the AVR core shines its USB lights, on B0 and D5 of an ATmega32U4. At the end it writes
// those pins high. Weak, because other cores do without.
extern volatile uint8_t TxLEDPulse __attribute__((weak));
extern volatile uint8_t RxLEDPulse __attribute__((weak));
#endif

namespace chip {
#define PORT(letter, offered) {#letter, offered, (uint16_t)&PIN##letter},
const Port TABLE[PORTS] PROGMEM = {CHIP_PORTS(PORT)};
#undef PORT

static void letGoOfEveryPin() {
#define PORT(letter, offered)   \
    DDR##letter &= ~(offered);  \
    PORT##letter &= ~(offered);
    CHIP_PORTS(PORT)
#undef PORT
}

void begin() {
#if F_CPU == 16000000UL
    // Chips leave the factory dividing their clock by eight, and not every start-up code undoes it.
    if (CLKPR != 0) clock_prescale_set(clock_div_1);
#endif
#ifdef JTD
    // JTAG lets go of its four pins when JTD is written twice within four cycles.
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
        uint8_t off = MCUCR | _BV(JTD);
        MCUCR = off;
        MCUCR = off;
    }
#endif
    letGoOfEveryPin();
    stopLights();
    TCCR1A = 0;
    TCCR1B = _BV(CS10);
}

uint16_t rise(Pin pin, uint16_t most) {
    // One look at the pin and the next are a turn of the loop apart. So it rises several times, and each time the looks
    // begin three cycles later, until they have come at every cycle of a turn: the earliest high is the truest. An
    // interrupt can only make one of them late.
    constexpr uint8_t TURN = 8;
    // Ticks that pass besides, from the clock to the release and from seeing it high to the clock; bench/test_rise.c holds
    // it to that.
    constexpr uint8_t UNSEEN = 17;
    uint16_t best = most + 1;
    for (uint8_t phase = 1; phase <= TURN; phase++) {
        driveLow(pin);
        delayMicroseconds(5);
        uint16_t start = ticks();
        pullUp(pin);
        _delay_loop_1(phase);
        for (uint16_t left = most / TURN; !(*pin.pinRegister & pin.bit); left--) {
            if (left == 0) return best;
        }
        uint16_t took = ticks() - start - UNSEEN;
        if (took < best) best = took;
    }
    return best;
}

void stopLights() {
#ifdef USBCON
    if (&TxLEDPulse) TxLEDPulse = 0;
    if (&RxLEDPulse) RxLEDPulse = 0;
#endif
}
}  // namespace chip
