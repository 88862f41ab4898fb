#include "line.h"

static constexpr uint8_t TAIL = 5;  // the star and four digits

bool same(const char *text, const char *flashText) {
    for (;; text++, flashText++) {
        char other = pgm_read_byte(flashText);
        if (*text != other) return false;
        if (other == 0) return true;
    }
}

bool readNumber(const char *text, uint32_t limit, uint32_t &number) {
    if (text[0] == '0' && text[1] != 0) return false;
    number = 0;
    uint8_t digits = 0;
    for (; *text != 0; text++) {
        if (*text < '0' || *text > '9' || ++digits > 9) return false;
        number = number * 10 + (uint8_t)(*text - '0');
    }
    return digits > 0 && number <= limit;
}

LineReader::Outcome LineReader::take(uint8_t byte) {
    if (byte == '\n') {
        Outcome outcome = close();
        length = 0;
        bad = tooLong = false;
        return outcome;
    }
    if (length > LONGEST_LINE) tooLong = true;
    if (tooLong) return MORE;
    // A carriage return may only be the last; close() finds any other.
    if ((byte < ' ' && byte != '\r') || byte > '~') bad = true;
    text[length++] = (char)byte;
    return MORE;
}

LineReader::Outcome LineReader::close() {
    if (!tooLong && length > 0 && text[length - 1] == '\r') length--;
    if (tooLong || length > LONGEST_LINE) return TOO_LONG;
    if (length == 0) return MORE;  // an empty line says nothing
    if (bad || length <= TAIL) return BAD;
    uint8_t body = length - TAIL;
    uint16_t crc = 0;
    for (uint8_t i = 0; i < body; i++) {
        if (text[i] == '*' || text[i] == '\r') return BAD;
        crc = crcStep(crc, (uint8_t)text[i]);
    }
    if (text[body] != '*') return BAD;
    for (uint8_t i = body + 1; i < length; i++, crc <<= 4) {
        uint8_t digit = crc >> 12;
        if (text[i] != (char)(digit < 10 ? '0' + digit : 'A' + digit - 10)) return BAD;
    }
    text[body] = 0;
    return LINE;
}

uint8_t LineReader::split() {
    uint8_t fields = 1;
    char before = ' ';
    for (char *at = text; *at != 0; at++) {
        if (*at == ' ' && before == ' ') return 0;
        before = *at;
        if (*at == ' ') {
            fields++;
            *at = 0;
        }
    }
    return before == ' ' ? 0 : fields;
}

const char *LineReader::field(uint8_t number) const {
    const char *at = text;
    for (; number > 0; number--) {
        while (*at++ != 0) {
        }
    }
    return at;
}

void LineWriter::begin() { length = taken = 0; }

void LineWriter::word(const char *flashText) {
    space();
    for (; char c = pgm_read_byte(flashText); flashText++) put(c);
}

void LineWriter::copy(const char *text) {
    space();
    for (; *text != 0; text++) put(*text);
}

// Taking powers of ten away costs an AVR far less than dividing by ten, and less again once 16 bits will do.
template <typename Number>
static inline char takeDigit(Number &number, Number power) {
    char digit = '0';
    for (; number >= power; number -= power) digit++;
    return digit;
}

void LineWriter::number(uint32_t number) {
    space();
    static const uint32_t LARGE[] = {1000000000, 100000000, 10000000, 1000000, 100000, 10000};
    static const uint16_t SMALL[] = {1000, 100, 10};
    uint8_t first = length;
    if (number > 9999) {
        for (uint32_t power : LARGE) {
            char digit = takeDigit(number, power);
            if (digit != '0' || length > first) put(digit);
        }
    }
    uint16_t rest = number;
    for (uint16_t power : SMALL) {
        char digit = takeDigit(rest, power);
        if (digit != '0' || length > first) put(digit);
    }
    put('0' + rest);
}

void LineWriter::end() {
    if (length == 0) return;
    uint16_t crc = 0;
    char *const star = text + length;
    for (char *at = text; at < star; at++) crc = crcStep(crc, (uint8_t)*at);
    text[length++] = '*';
    for (uint8_t i = 0; i < 4; i++, crc <<= 4) {
        uint8_t digit = crc >> 12;
        text[length++] = digit < 10 ? '0' + digit : 'A' + digit - 10;
    }
    text[length++] = '\n';
}

void LineWriter::space() {
    if (length > 0) put(' ');
}

void LineWriter::put(char character) {
    if (length < LONGEST_LINE - TAIL) text[length++] = character;  // no line of ours comes near
}
