// Lines of the protocol, to and from bytes. Nothing here knows a chip or a port, so the same code is tested on a PC.
#pragma once
#include <stdint.h>
#ifdef __AVR__
#include <avr/pgmspace.h>
#else
#define PSTR(text) (text)
#define pgm_read_byte(address) (*(const uint8_t *)(address))
#endif

/**
 * One step of CRC-16/XMODEM: polynomial 1021, from 0000, no reflection. A whole byte at once in eight-bit arithmetic,
 * because an AVR shifts 16 bits slowly; the shifts are those of the polynomial's terms 12, 5 and 0.
 */
__attribute__((always_inline)) inline uint16_t crcStep(uint16_t crc, uint8_t byte) {
    uint8_t x = (uint8_t)(crc >> 8) ^ byte;
    x ^= x >> 4;
    uint8_t high = (uint8_t)crc ^ (uint8_t)(x << 4) ^ (x >> 3);
    uint8_t low = x ^ (uint8_t)(x << 5);
    return (uint16_t)(high << 8) | low;
}

/** Whether a text in RAM equals one in flash. */
bool same(const char *text, const char *flashText);

/** Reads a decimal number without sign or leading zeros; false when it is none, or above the limit. */
bool readNumber(const char *text, uint32_t limit, uint32_t &number);

constexpr uint8_t LONGEST_LINE = 96;  // without its line end

/** Gathers received bytes into one line and takes it apart into fields. */
class LineReader {
   public:
    enum Outcome : uint8_t { MORE, LINE, BAD, TOO_LONG };

    /** Takes one byte. After anything but MORE the next byte begins a new line. */
    Outcome take(uint8_t byte);

    /** After LINE: ends each field where its space was, and counts them; 0 unless single spaces part them. */
    uint8_t split();

    /** Field number 0 is the verb. Valid after split() and until the next byte. */
    const char *field(uint8_t number) const;

   private:
    Outcome close();

    char text[LONGEST_LINE + 2];  // one more for a carriage return, one for the closing zero
    uint8_t length = 0;
    bool bad = false;
    bool tooLong = false;
};

/** Writes one line: fields, the CRC, the line end. */
class LineWriter {
   public:
    void begin();
    void word(const char *flashText);
    void copy(const char *text);
    void number(uint32_t number);
    /** Closes the line; one without any field is not sent. */
    void end();

    /** What was written and is not yet taken. */
    const uint8_t *next() const { return (const uint8_t *)text + taken; }
    uint8_t left() const { return length - taken; }
    void take(uint8_t bytes) { taken += bytes; }
    bool idle() const { return taken == length; }

   private:
    void space();
    void put(char character);

    char text[LONGEST_LINE + 1];
    uint8_t length = 0;
    uint8_t taken = 0;
};
