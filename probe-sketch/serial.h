// The serial port, as a place to put bytes that never makes anyone wait.
#pragma once
#include "chip.h"

#ifndef PROBE_BAUD
#define PROBE_BAUD 115200  // USB ignores it
#endif

namespace serial {
inline void begin() { PROBE_SERIAL.begin(PROBE_BAUD); }

/** The next received byte, or -1. */
inline int receive() { return PROBE_SERIAL.available() > 0 ? PROBE_SERIAL.read() : -1; }

#ifdef USBCON
/** Over USB: sends as much as fits. Whether the host holds DTR does not matter. */
inline uint8_t send(Serial_ &port, const uint8_t *bytes, uint8_t count) {
    // The core waits for the host when a packet becomes full to the last byte, so that one stays free.
    int room = port.availableForWrite() - 1;
    if (room == 0) port.flush();  // on its way now, not at the next millisecond
    if (room <= 0) return 0;
    if (room > count) room = count;
    return USB_Send(CDC_TX, bytes, room) < 0 ? 0 : room;
}
#endif

/** Over any other port. */
template <typename SerialPort>
inline uint8_t send(SerialPort &port, const uint8_t *bytes, uint8_t count) {
    int room = port.availableForWrite();
    uint8_t sent = 0;
    for (; sent < count && sent < room; sent++) port.write(bytes[sent]);
    return sent;
}
}  // namespace serial
