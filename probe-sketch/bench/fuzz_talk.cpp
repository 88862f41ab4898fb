// Any bytes as what a host sends: the sketch, all but its chip, under sanitizers and against a plain reading of lines.
//   fuzz_talk FILE...        each file as it is, its checks mended, and 200 times spoiled; built without libFuzzer
// Built where host_chip.h stands in the place of chip.h, all in one piece so that each input begins with a fresh sketch.
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <sstream>
#include <vector>

#include "line.cpp"
#include "probe.cpp"
#include "sweep.cpp"

HostSerial hostSerial;
uint32_t hostMicros, hostNoise, hostBusy;
static long lost;

static void must(bool holds, const std::string &what) {
    if (holds) return;
    std::fprintf(stderr, "FAILED %s\n", what.c_str());
    std::abort();
}

static std::string plainCheck(const std::string &body) {
    unsigned crc = 0;
    for (unsigned char byte : body) {
        crc ^= byte << 8;
        for (int bit = 0; bit < 8; bit++) crc = (crc & 0x8000 ? crc << 1 ^ 0x1021 : crc << 1) & 0xFFFF;
    }
    char tail[8];
    std::snprintf(tail, sizeof tail, "*%04X", crc);
    return tail;
}

/** A line as PROTOCOL.md has it: printable, one star, its check; the whole at most 96 bytes. */
static bool isWhole(const std::string &line) {
    if (line.size() < 6 || line.size() > 96 || line.find('*') != line.size() - 5) return false;
    for (unsigned char byte : line) {
        if (byte < ' ' || byte > '~') return false;
    }
    std::string body = line.substr(0, line.size() - 5);
    return body + plainCheck(body) == line;
}

/** By single spaces, and nothing but spaces between. */
static bool isParted(const std::string &body) {
    return body.front() != ' ' && body.back() != ' ' && body.find("  ") == std::string::npos;
}

static std::vector<std::string> lines(const std::string &bytes) {
    std::vector<std::string> all;
    size_t at = 0;
    for (size_t end; (end = bytes.find('\n', at)) != std::string::npos; at = end + 1) all.push_back(bytes.substr(at, end - at));
    return all;
}

static std::string mended(const std::string &bytes) {
    std::string all;
    for (const std::string &line : lines(bytes)) {
        std::string body = line.substr(0, line.find('*'));
        all += body + plainCheck(body) + "\n";
    }
    return all;
}

static void fresh(const std::string &bytes) {
    using namespace probe;
    in = LineReader();
    out = LineWriter();
    sweep = Sweep();
    waiting = LineReader::MORE;
    sweeping = greeted = telling = false;
    lastBeat = 0;
    tellLow = tellReads = 0;
    hostMicros = 4294000000u;  // it turns over on the way
    hostNoise = (uint32_t)bytes.size();
    hostBusy = hostNoise % 17;
    hostSerial = {bytes, "", 0};
    begin();
}

/** Each line of the host that is none is refused once, no line is answered twice, and all that is said is whole. */
static void talk(const std::string &bytes) {
    fresh(bytes);
    long rounds = 0;
    for (int after = 0; after < 400; after += hostSerial.available() == 0) {
        probe::run();
        must(++rounds < 100000 + 4000L * (long)bytes.size(), "the sketch comes to the end of what it hears");
    }
    size_t bad = 0, spaced = 0, asked = 0;
    for (const std::string &line : lines(bytes)) {
        std::string text = !line.empty() && line.back() == '\r' ? line.substr(0, line.size() - 1) : line;
        if (text.empty()) continue;
        asked++;
        bad += !isWhole(text);
        spaced += isWhole(text) && !isParted(text.substr(0, text.size() - 5));
    }
    size_t refused = 0, unparted = 0, answers = 0;
    unsigned long told = 0;
    for (const std::string &line : lines(hostSerial.fromProbe)) {
        must(isWhole(line), "the probe says whole lines, and not " + line);
        std::istringstream words(line.substr(0, line.size() - 5));
        std::string verb, second, third;
        words >> verb >> second >> third;
        unsigned long number = std::strtoul(second.c_str(), nullptr, 10);
        answers += verb == "iam" || verb == "ok" || verb == "no";
        unparted += line.compare(0, 12, "no ? fields*") == 0;
        refused += line.compare(0, 9, "no ? crc*") == 0 || line.compare(0, 10, "no ? long*") == 0;
        if (verb == "ok" && (second == "go" || second == "forget" || second == "stop")) told = 0;
        if (verb == "+" || verb == "-") must(number == ++told, "changes are numbered one by one: " + line);
        if (verb == "lost") {
            told += std::strtoul(third.c_str(), nullptr, 10);
            must(number == told, "what was lost is counted: " + line);
            lost++;
        }
    }
    must(refused == bad, std::to_string(bad) + " lines were none, " + std::to_string(refused) + " refused");
    must(unparted == spaced, std::to_string(spaced) + " lines had odd spaces, " + std::to_string(unparted) + " refused");
    must(answers <= asked + 1, std::to_string(asked) + " lines, " + std::to_string(answers) + " answers and greeting");
}

extern "C" int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size) {
    std::string bytes((const char *)data, size);
    talk(bytes);
    talk(mended(bytes));
    return 0;
}

#ifndef FUZZING_LONG
static void spoil(std::string &bytes) {
    for (int times = 1 + std::rand() % 4; times > 0 && !bytes.empty(); times--) {
        size_t at = (size_t)std::rand() % bytes.size();
        size_t length = 1 + (size_t)std::rand() % 12;
        switch (std::rand() % 3) {
            case 0:
                bytes[at] = (char)(bytes[at] ^ 1 << std::rand() % 8);
                break;
            case 1:
                bytes.erase(at, length);
                break;
            default:
                bytes.insert((size_t)std::rand() % bytes.size(), bytes.substr(at, length));
        }
    }
}

int main(int count, char **files) {
    const unsigned SEED = 20261125;
    std::srand(SEED);
    int tried = 0;
    for (int file = 1; file < count; file++) {
        std::ifstream in(files[file], std::ios::binary);
        must((bool)in, std::string(files[file]) + " can be read");
        std::string bytes((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
        std::string input = bytes;
        for (int time = 0; time <= 200; time++, tried++) {
            LLVMFuzzerTestOneInput((const uint8_t *)input.data(), input.size());
            input = bytes;
            spoil(input);
        }
    }
    must(tried > 1000 && lost > 0, "there is a corpus, in which changes are lost");
    std::printf("figure: kept inputs to the sketch's talk, under sanitizers | %d, and %d spoiled (seed %u) | each line answered once, none wrongly\n",
                count - 1, tried - count + 1, SEED);
    std::puts("all good");
    return 0;
}
#endif
