// Tests the sketch's own line reader and writer on a PC, and that each example in PROTOCOL.md has the right CRC.
//   test_line PROTOCOL.md
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <set>
#include <string>

#include "../line.h"

static int failures = 0;
static int checks = 0;

static void check(bool holds, const std::string &what) {
    checks++;
    if (holds) return;
    failures++;
    std::printf("FAILED %s\n", what.c_str());
}

// Bit by bit, as the catalogue defines it; the sketch computes it another way.
static unsigned plainCrc(const std::string &body) {
    unsigned crc = 0;
    for (unsigned char byte : body) {
        crc ^= byte << 8;
        for (int bit = 0; bit < 8; bit++) crc = (crc & 0x8000 ? crc << 1 ^ 0x1021 : crc << 1) & 0xFFFF;
    }
    return crc;
}

static std::string closed(const std::string &body) {
    char tail[8];
    std::snprintf(tail, sizeof tail, "*%04X", plainCrc(body));
    return body + tail;
}

static LineReader::Outcome feed(LineReader &reader, const std::string &bytes) {
    LineReader::Outcome outcome = LineReader::MORE;
    for (unsigned char byte : bytes) outcome = reader.take(byte);
    return outcome;
}

static void the_crc_has_the_published_check_value() {
    check(plainCrc("123456789") == 0x31C3, "CRC-16/XMODEM of 123456789 is 31C3 (Cook's catalogue)");
    for (unsigned crc = 0; crc < 0x10000; crc += 37) {
        for (unsigned byte = 0; byte < 256; byte++) {
            unsigned plain = crc ^ byte << 8;
            for (int bit = 0; bit < 8; bit++) plain = (plain & 0x8000 ? plain << 1 ^ 0x1021 : plain << 1) & 0xFFFF;
            if (crcStep((uint16_t)crc, (uint8_t)byte) != plain) return check(false, "crcStep equals the plain CRC");
        }
    }
    check(true, "crcStep equals the plain CRC");
}

static void a_line_comes_back_as_its_fields() {
    LineReader reader;
    check(feed(reader, closed("add F4 GPIO12") + "\n") == LineReader::LINE, "a good line is a line");
    check(reader.split() == 3, "three fields");
    check(std::strcmp(reader.field(0), "add") == 0 && std::strcmp(reader.field(2), "GPIO12") == 0, "their texts");
    check(feed(reader, closed("go") + "\r\n") == LineReader::LINE && reader.split() == 1, "CR LF ends a line too");
}

static void what_is_no_line_is_said_and_left_behind() {
    LineReader reader;
    const struct {
        std::string bytes;
        LineReader::Outcome outcome;
    } CASES[] = {
        {"\n", LineReader::MORE},
        {"\r\n", LineReader::MORE},
        {"go\n", LineReader::BAD},
        {"*0000\n", LineReader::BAD},
        {"go*\n", LineReader::BAD},
        {"\r\r\n", LineReader::BAD},
        {closed("go") + " \n", LineReader::BAD},
        {closed("go\x7f") + "\n", LineReader::BAD},
        {closed("g\to") + "\n", LineReader::BAD},
        {closed("g\ro") + "\n", LineReader::BAD},
        {closed("g*o") + "\n", LineReader::BAD},
        {closed("\xC3\xA9") + "\n", LineReader::BAD},
        {std::string("go\0", 3) + closed("") + "\n", LineReader::BAD},
        {closed(std::string(91, 'x')) + "\n", LineReader::LINE},
        {closed(std::string(91, 'x')) + "\r\n", LineReader::LINE},
        {closed(std::string(92, 'x')) + "\n", LineReader::TOO_LONG},
        {std::string(5000, 'x') + "\n", LineReader::TOO_LONG},
        {std::string(97, 'x') + "\r\n", LineReader::TOO_LONG},
    };
    for (const auto &c : CASES) {
        check(feed(reader, c.bytes) == c.outcome, "outcome of " + c.bytes.substr(0, 40));
        check(feed(reader, closed("go") + "\n") == LineReader::LINE, "the next line is whole after " + c.bytes.substr(0, 40));
    }
    std::string lower = closed("stop");
    for (char &c : lower) c = (char)std::tolower(c);
    check(lower != closed("stop") && feed(reader, lower + "\n") == LineReader::BAD, "digits are upper case");
}

static void every_spoiled_byte_is_noticed() {
    const std::string good = closed("+ 4711 123456789 3 17");
    for (size_t at = 0; at < good.size(); at++) {
        for (int flip = 1; flip < 256; flip++) {
            std::string bad = good;
            bad[at] = (char)(bad[at] ^ flip);
            if (bad[at] == '\n') continue;  // then it is two lines
            LineReader reader;
            if (feed(reader, bad + "\n") != LineReader::BAD) return check(false, "spoiled at " + std::to_string(at));
        }
    }
    check(true, "every spoiled byte");
}

static void fields_are_parted_by_single_spaces() {
    for (const char *body : {" go", "go ", "add  F4", " ", "  "}) {
        LineReader reader;
        check(feed(reader, closed(body) + "\n") == LineReader::LINE && reader.split() == 0, std::string("spaces of") + body);
    }
}

static void noise_never_reaches_beyond_the_line() {
    const unsigned seed = 20260102;
    std::printf("  noise seed %u\n", seed);
    std::srand(seed);
    LineReader reader;
    int lines = 0;
    for (int i = 0; i < 2000000; i++) {
        int byte = std::rand() >> 8 & 0xFF;
        if (i % 400 < 60) byte = 'x';
        if (reader.take((uint8_t)byte) == LineReader::LINE) lines += reader.split() > 0;
    }
    check(lines <= 1, "two million bytes of noise hold hardly a line");
    feed(reader, "\n");
    check(feed(reader, closed("go") + "\n") == LineReader::LINE, "and the next line is whole");
}

static void numbers_are_written_and_read() {
    const uint32_t NUMBERS[] = {0, 1, 9, 10, 99, 100, 999, 1000, 9999, 10000, 10001, 65535, 65536, 100000, 4294967295u,
                                4294967290u, 1000000000, 999999999, 305419896, 90000, 70007};
    for (uint32_t number : NUMBERS) {
        LineWriter writer;
        writer.begin();
        writer.number(number);
        writer.end();
        std::string line((const char *)writer.next(), writer.left());
        check(line == closed(std::to_string(number)) + "\n", "number " + std::to_string(number) + " is " + line);
    }
    uint32_t read = 0;
    check(readNumber("1000", 1000, read) && read == 1000, "1000 up to 1000");
    check(!readNumber("1001", 1000, read), "1001 up to 1000");
    for (const char *none : {"", "-1", "+1", "01", "1.0", "1e3", "x", "99999999999"}) {
        check(!readNumber(none, 0xFFFFFFFF, read), std::string("no number: ") + none);
    }
    check(readNumber("0", 9, read) && read == 0, "0 is a number");
}

static void a_line_is_sent_piece_by_piece() {
    LineWriter writer;
    check(writer.idle(), "nothing to send at first");
    writer.begin();
    writer.end();
    check(writer.idle(), "a line without fields is not sent");
    writer.begin();
    writer.word("ok");
    writer.copy("forget");
    writer.end();
    std::string sent;
    while (!writer.idle()) {
        sent += (char)*writer.next();
        writer.take(1);
    }
    check(sent == closed("ok forget") + "\n", "all of it arrives");
}

static void the_examples_are_right(const char *path) {
    std::ifstream page(path);
    std::set<std::string> verbs;
    std::string line;
    int examples = 0;
    for (int number = 1; std::getline(page, line); number++) {
        if (line.size() < 8 || (line.compare(0, 2, "> ") != 0 && line.compare(0, 2, "< ") != 0)) continue;
        std::string body = line.substr(2, line.rfind('*') - 2);
        std::string where = std::string(path) + ":" + std::to_string(number) + ": ";
        check(line.substr(2) == closed(body), where + "should read " + closed(body));
        LineReader reader;
        check(feed(reader, line.substr(2) + "\n") == LineReader::LINE && reader.split() > 0, where + "is a line");
        verbs.insert(line.substr(0, 2) + body.substr(0, body.find(' ')));
        examples++;
    }
    for (const char *verb : {"> who", "> forget", "> add", "> settle", "> go", "> stop", "> state", "< iam", "< ok", "< no",
                             "< =", "< full", "< +", "< -", "< beat", "< lost"}) {
        check(verbs.count(verb) == 1, std::string(path) + " lacks an example of " + verb);
    }
    std::printf("  %d examples\n", examples);
}

int main(int count, char **words) {
    if (count != 2) return std::fprintf(stderr, "use: test_line PROTOCOL.md\n"), 2;
    the_crc_has_the_published_check_value();
    a_line_comes_back_as_its_fields();
    what_is_no_line_is_said_and_left_behind();
    every_spoiled_byte_is_noticed();
    fields_are_parted_by_single_spaces();
    noise_never_reaches_beyond_the_line();
    numbers_are_written_and_read();
    a_line_is_sent_piece_by_piece();
    the_examples_are_right(words[1]);
    std::printf("%d checks of lines, %d failures\n", checks, failures);
    if (failures > 0) return 1;
    std::puts("all good");
    return 0;
}
