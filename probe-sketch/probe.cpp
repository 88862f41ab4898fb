#include "probe.h"

#include "line.h"
#include "serial.h"
#include "sweep.h"

#define WORD(text) out.word(PSTR(text))

namespace probe {
static constexpr uint32_t PROTOCOL = 1;
#define SKETCH_VERSION "0.1.0"
static constexpr uint16_t LONGEST_SETTLE = 1000;  // twice Sweep::LONGEST_RISE
static constexpr uint16_t BEAT_MILLIS = 250;
static constexpr uint8_t BYTES_AT_ONCE = 8;

static LineReader in;
static LineWriter out;
static LineReader::Outcome waiting;  // for its answer
static Sweep sweep;
static bool sweeping;
static bool greeted;
static uint16_t lastBeat;

// Where the whole state stands while it is being sent.
static bool telling;
static uint8_t tellLow, tellReads;

static void tellState() {
    telling = true;
    tellLow = tellReads = 0;
}

__attribute__((noinline)) static bool listen() {
    for (uint8_t i = 0; i < BYTES_AT_ONCE && waiting == LineReader::MORE; i++) {
        int byte = serial::receive();
        if (byte < 0) break;
        waiting = in.take(byte);
    }
    return true;
}

__attribute__((noinline)) static bool speak() {
    uint8_t sent = serial::send(PROBE_SERIAL, out.next(), out.left());
    out.take(sent);
    return sent > 0;
}

/** Moves bytes both ways as far as they go without waiting; true when any moved. */
static bool talk() {
    bool moved = false;
    if (waiting == LineReader::MORE && PROBE_SERIAL.available() > 0) moved = listen();
    if (!out.idle()) moved |= speak();
    return moved;
}

static void sayWho() {
    WORD("iam");
    out.number(PROTOCOL);
    WORD(SKETCH_VERSION);
    WORD(CHIP_NAME);
    out.number(chip::MOST_PINS);
    out.number(F_CPU);
}

static void ok(const char *flashVerb) {
    WORD("ok");
    out.word(flashVerb);
}

static void no(const char *flashVerb, const char *flashReason) {
    WORD("no");
    out.word(flashVerb);
    out.word(flashReason);
}

static void stop() {
    sweeping = telling = false;
    sweep.changes.clear();
}

static void add(uint8_t fields) {
    if (sweeping) return no(PSTR("add"), PSTR("sweeping"));
    uint8_t before = sweep.pins();
    for (uint8_t i = 1; i < fields; i++) {
        Sweep::Refusal refusal = sweep.add(in.field(i));
        if (refusal == Sweep::NONE) continue;
        while (sweep.pins() > before) sweep.dropLast();
        if (refusal == Sweep::TOO_MANY) return no(PSTR("add"), PSTR("many"));
        no(PSTR("add"), refusal == Sweep::TWICE ? PSTR("twice") : PSTR("pin"));
        return out.copy(in.field(i));
    }
    ok(PSTR("add"));
    out.number(sweep.pins());
}

static void settle() {
    uint32_t micros;
    if (same(in.field(1), PSTR("auto"))) {
        if (sweep.pins() == 0) return no(PSTR("settle"), PSTR("empty"));
        micros = sweep.measuredSettle();
    } else if (!readNumber(in.field(1), LONGEST_SETTLE, micros) || micros == 0) return no(PSTR("settle"), PSTR("range"));
    sweep.settle(micros);
    ok(PSTR("settle"));
    out.number(micros);
}

static void rise() {
    uint32_t index;
    if (!readNumber(in.field(1), 255, index) || index >= sweep.pins()) return no(PSTR("rise"), PSTR("index"));
    uint16_t ticks = sweep.rise(index);
    if (ticks > Sweep::LONGEST_RISE) {
        no(PSTR("rise"), PSTR("low"));
        return out.number(index);
    }
    ok(PSTR("rise"));
    out.number(index);
    out.number((uint32_t)ticks * 1000 / chip::TICKS_PER_MICRO);
}

static void go() {
    if (sweep.pins() == 0) return no(PSTR("go"), PSTR("empty"));
    sweep.begin();
    sweeping = true;
    lastBeat = millis();
    tellState();
    ok(PSTR("go"));
    out.number(sweep.pins());
}

/** Whether a line is one that only a probe says: an echo, which gets no answer lest the two go on for ever. */
static bool isEcho(const char *verb) {
    return same(verb, PSTR("iam")) || same(verb, PSTR("ok")) || same(verb, PSTR("no")) || same(verb, PSTR("=")) ||
           same(verb, PSTR("full")) || same(verb, PSTR("+")) || same(verb, PSTR("-")) || same(verb, PSTR("beat")) ||
           same(verb, PSTR("lost"));
}

static void answerLine() {
    uint8_t fields = in.split();
    if (fields == 0) return no(PSTR("?"), PSTR("fields"));
    const char *verb = in.field(0);
    uint32_t version;
    if (same(verb, PSTR("who"))) {
        if (fields != 2) return no(PSTR("who"), PSTR("fields"));
        if (!readNumber(in.field(1), 999999999, version) || version == 0) return no(PSTR("who"), PSTR("version"));
        sayWho();
    } else if (same(verb, PSTR("add"))) {
        if (fields < 2) return no(PSTR("add"), PSTR("fields"));
        add(fields);
    } else if (same(verb, PSTR("settle"))) {
        if (fields != 2) return no(PSTR("settle"), PSTR("fields"));
        settle();
    } else if (same(verb, PSTR("rise"))) {
        if (fields != 2) return no(PSTR("rise"), PSTR("fields"));
        rise();
    } else if (same(verb, PSTR("forget"))) {
        if (fields != 1) return no(PSTR("forget"), PSTR("fields"));
        stop();
        sweep.forget();
        ok(PSTR("forget"));
    } else if (same(verb, PSTR("go"))) {
        if (fields != 1) return no(PSTR("go"), PSTR("fields"));
        go();
    } else if (same(verb, PSTR("stop"))) {
        if (fields != 1) return no(PSTR("stop"), PSTR("fields"));
        stop();
        ok(PSTR("stop"));
    } else if (same(verb, PSTR("state"))) {
        if (fields != 1) return no(PSTR("state"), PSTR("fields"));
        if (!sweeping) return no(PSTR("state"), PSTR("stopped"));
        tellState();
    } else if (!isEcho(verb)) {
        no(PSTR("?"), PSTR("verb"));
    }
}

static void answer() {
    switch (waiting) {
        case LineReader::LINE:
            answerLine();
            break;
        case LineReader::TOO_LONG:
            no(PSTR("?"), PSTR("long"));
            break;
        default:
            no(PSTR("?"), PSTR("crc"));
    }
    waiting = LineReader::MORE;
}

static void tellChange() {
    const Change &change = sweep.changes.take();
    out.word(change.closed ? PSTR("+") : PSTR("-"));
    out.number(sweep.changes.toldUpTo());
    out.number(change.micros);
    out.number(change.low);
    out.number(change.reads);
}

static void tellLost() {
    uint32_t missed = sweep.changes.missed();
    sweep.changes.forgive();
    WORD("lost");
    out.number(sweep.changes.toldUpTo());
    out.number(missed);
    tellState();
}

/** Seq and micros, which open the lines that sum the sweeping up. */
static void tellWhen(const char *flashVerb) {
    out.word(flashVerb);
    out.number(sweep.changes.toldUpTo());
    out.number(micros());
}

static void tellNextOfState() {
    for (; tellLow < sweep.pins(); tellLow++, tellReads = 0) {
        while (tellReads < sweep.pins()) {
            uint8_t reads = tellReads++;
            if (!sweep.closed(tellLow, reads)) continue;
            WORD("=");
            out.number(tellLow);
            return out.number(reads);
        }
    }
    telling = false;
    tellWhen(PSTR("full"));
    out.number(sweep.closedPairs());
}

static void tellBeat() {
    lastBeat = millis();
    tellWhen(PSTR("beat"));
    out.number(sweep.sweeps());
    out.number(sweep.closedPairs());
}

/** Whether the probe has anything to say of its own accord. */
static bool isDue() {
    if (!sweep.changes.empty() || telling || !greeted || sweep.changes.missed() > 0) return true;
    return sweeping && (uint16_t)(millis() - lastBeat) >= BEAT_MILLIS;
}

/** Writes the one line that is most due. */
static void compose() {
    out.begin();
    if (waiting != LineReader::MORE) {
        answer();
    } else if (!greeted) {
        greeted = true;
        sayWho();
    } else if (!sweep.changes.empty()) {
        tellChange();
    } else if (sweep.changes.missed() > 0) {
        tellLost();
    } else if (telling) {
        tellNextOfState();
    } else {
        tellBeat();
    }
    out.end();
}

void begin() {
    chip::begin();
    serial::begin();
    sweep.settle(chip::SETTLE_MICROS);
}

void run() {
    if (out.idle() && (waiting != LineReader::MORE || isDue())) compose();
    if (sweeping && !telling) {
        sweep.run(talk);
    } else {
        talk();
    }
}
}  // namespace probe
