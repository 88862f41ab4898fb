#include "chip.h"

#include <avr/power.h>
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

void stopLights() {
#ifdef USBCON
    if (&TxLEDPulse) TxLEDPulse = 0;
    if (&RxLEDPulse) RxLEDPulse = 0;
#endif
}
}  // namespace chip
