// Executes the compiled sketch with a wired matrix on its pins, and joins its serial port to a pseudo-terminal.
//   bench SKETCH.elf --wiring FILE --link PATH [--between low|high] [--rise MICROS]
// Reads commands on standard input, one a line, and answers each with one line, `ok …` or `error …`.
#include <errno.h>
#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <termios.h>
#include <time.h>
#include <unistd.h>

#include "controller.h"

enum {
    CYCLES_PER_MICRO = 16,
    SLICE = 100 * CYCLES_PER_MICRO,
    LOOK_EVERY = 10,
    QUEUE = 4096,
    LINE = 1024,
    // Between the last byte that passed and the end of the pty, which takes along what was not read yet.
    PULL = 20000 * CYCLES_PER_MICRO
};

static controller probe;
static bool betweenReadsLow;
static const char *linkPath;
static int pty = -1;
static bool listened;
static uint8_t queue[QUEUE];
static int queued, given;
static uint64_t vanished;

// The line that the sketch is saying, and what it has owned up to in those before.
static char said[LINE];
static size_t saidLength;
static bool saidAll = true;
static uint32_t lastChange;
static uint64_t noticed, told, cut;
// The cable is pulled when so many bytes of a line are out; 0 for never.
static size_t cutAfter;
static avr_cycle_count_t pullAt;

// The command under way, if any: a key that changes a number of times, and then the answer.
static char movingKey[LINE];
static uint64_t movesLeft;
static avr_cycle_count_t moveEvery, nextMove;
static bool busy;

static double slowest = 1;

static void say(const char *format, ...) {
    va_list arguments;
    va_start(arguments, format);
    vprintf(format, arguments);
    va_end(arguments);
    putchar('\n');
    fflush(stdout);
}

static void die(const char *format, ...) {
    va_list arguments;
    va_start(arguments, format);
    fprintf(stderr, "bench: ");
    vfprintf(stderr, format, arguments);
    va_end(arguments);
    fputc('\n', stderr);
    if (pty >= 0) unlink(linkPath);
    exit(2);
}

/** Opens a new pseudo-terminal and points the link at it. */
static bool plug(void) {
    pty = posix_openpt(O_RDWR | O_NOCTTY | O_NONBLOCK);
    if (pty < 0 || grantpt(pty) != 0 || unlockpt(pty) != 0) return false;
    const char *name = ptsname(pty);
    // Raw from the start, and opened once, so that the pty knows when nobody listens.
    int slave = open(name, O_RDWR | O_NOCTTY);
    struct termios raw;
    if (slave < 0 || tcgetattr(slave, &raw) != 0) return false;
    cfmakeraw(&raw);
    tcsetattr(slave, TCSANOW, &raw);
    close(slave);
    char fresh[LINE];
    snprintf(fresh, sizeof fresh, "%s.new", linkPath);
    unlink(fresh);
    return symlink(name, fresh) == 0 && rename(fresh, linkPath) == 0;
}

static void unplug(void) {
    unlink(linkPath);
    close(pty);
    pty = -1;
    listened = false;
    queued = given = 0;
    cutAfter = 0;
    pullAt = 0;
}

/** Counts changes: those that the sketch has numbered so far, and those whose line left whole. */
static void line_said(void) {
    static const char *const numbered[] = {"+", "-", "full", "beat", "lost"};
    char verb[8];
    unsigned number;
    if (strncmp(said, "ok go ", 6) == 0) lastChange = 0;
    if (sscanf(said, "%7s %u", verb, &number) != 2) return;
    for (size_t i = 0; i < sizeof numbered / sizeof *numbered; i++) {
        if (strcmp(verb, numbered[i]) != 0) continue;
        noticed += (uint32_t)(number - lastChange);
        lastChange = number;
        if (i < 2 && saidAll) told++;
    }
}

static void to_host(void *context, uint8_t byte) {
    (void)context;
    if (cutAfter > 0 && pullAt == 0 && listened && saidLength >= cutAfter) {
        pullAt = probe.avr->cycle + PULL;
        cut++;
    }
    bool passes = pty >= 0 && listened && pullAt == 0 && write(pty, &byte, 1) == 1;
    if (!passes) vanished++;
    saidAll &= passes;
    if (saidLength < LINE - 1) said[saidLength++] = (char)byte;
    if (byte != '\n') return;
    said[saidLength] = 0;
    line_said();
    saidLength = 0;
    saidAll = true;
}

static void from_host(void) {
    if (pty < 0) return;
    struct pollfd look = {.fd = pty, .events = POLLIN};
    poll(&look, 1, 0);
    listened = !(look.revents & POLLHUP);
    if (given == queued) given = queued = 0;
    if (look.revents & POLLIN && queued < QUEUE) {
        ssize_t got = read(pty, queue + queued, (size_t)(QUEUE - queued));
        if (got > 0) queued += (int)got;
    }
}

static bool press(const char *key, bool pressed) {
    if (!board_press(probe.board, key, pressed)) return false;
    controller_board_changed(&probe);
    return true;
}

/** Begins a command that takes a while: a key that changes so many times, so far apart; then the answer. */
static void begin(const char *key, uint64_t moves, avr_cycle_count_t every) {
    snprintf(movingKey, sizeof movingKey, "%s", key);
    movesLeft = moves;
    moveEvery = every;
    nextMove = probe.avr->cycle + every;
    busy = true;
}

static void go_on(void) {
    if (pullAt != 0 && probe.avr->cycle >= pullAt) unplug();
    while (busy && probe.avr->cycle >= nextMove) {
        if (movesLeft == 0) {
            busy = false;
            say("ok");
            return;
        }
        press(movingKey, !board_pressed(probe.board, movingKey));
        nextMove += --movesLeft == 0 ? 0 : moveEvery;
    }
}

/** Solders the board anew; what is held stays held, so that a joint can come and go under a finger. */
static void load(const char *path) {
    char error[LINE];
    board *fresh = board_read(path, betweenReadsLow, error, sizeof error);
    if (fresh == NULL) {
        say("error %s", error);
        return;
    }
    board_hold_like(fresh, probe.board);
    board_free(probe.board);
    probe.board = fresh;
    controller_board_changed(&probe);
    say("ok");
}

static void stats(void) {
    say("ok noticed %llu told %llu cut %llu in %llu out %llu vanished %llu refused %llu cycles %llu sweeps %llu slowest %.2f",
        (unsigned long long)noticed, (unsigned long long)told, (unsigned long long)cut,
        (unsigned long long)probe.bytesIn, (unsigned long long)probe.bytesOut, (unsigned long long)vanished,
        (unsigned long long)probe.bytesRefused, (unsigned long long)probe.avr->cycle,
        (unsigned long long)controller_sweeps(&probe), slowest);
}

/** Does one command; false to quit. */
static bool command(char *line) {
    char *word[5];
    int words = 0;
    for (char *next = strtok(line, " \t\r\n"); next != NULL && words < 5; next = strtok(NULL, " \t\r\n")) {
        word[words++] = next;
    }
    if (words == 0) return true;
    const char *verb = word[0];
    const char *key = words > 1 ? word[1] : "";
    unsigned long long first = words > 2 ? strtoull(word[2], NULL, 10) : 0;
    bool known = words > 1 && board_has(probe.board, key);
    if (strcmp(verb, "press") == 0 && words == 2) {
        say(press(key, true) ? "ok" : "error no key %s", key);
    } else if (strcmp(verb, "release") == 0 && words == 2) {
        say(press(key, false) ? "ok" : "error no key %s", key);
    } else if (strcmp(verb, "tap") == 0 && words == 3) {
        if (!known) return say("error no key %s", key), true;
        press(key, true);
        begin(key, 1, first * 1000 * CYCLES_PER_MICRO);
    } else if (strcmp(verb, "bounce") == 0 && words == 4) {
        if (!known) return say("error no key %s", key), true;
        press(key, false);
        begin(key, 2 * first, strtoull(word[3], NULL, 10) * CYCLES_PER_MICRO);
    } else if (strcmp(verb, "touch") == 0 && words == 3) {
        bool touched = board_touch(probe.board, key, word[2]);
        if (!touched) return say("error no joint %s %s, or no spare pin", key, word[2]), true;
        controller_board_changed(&probe);
        say("ok");
    } else if (strcmp(verb, "lift") == 0 && words == 1) {
        board_lift(probe.board);
        controller_board_changed(&probe);
        say("ok");
    } else if (strcmp(verb, "wait") == 0 && words == 2) {
        begin("", 0, strtoull(key, NULL, 10) * 1000 * CYCLES_PER_MICRO);
    } else if (strcmp(verb, "load") == 0 && words == 2) {
        load(key);
    } else if (strcmp(verb, "unplug") == 0 && words == 1) {
        if (pty < 0) return say("error unplugged already"), true;
        unplug();
        say("ok");
    } else if (strcmp(verb, "cut") == 0 && words == 2) {
        if (pty < 0) return say("error unplugged already"), true;
        cutAfter = (size_t)strtoull(key, NULL, 10);
        say("ok");
    } else if (strcmp(verb, "replug") == 0 && words == 1) {
        if (pty >= 0) unplug();
        say(plug() ? "ok" : "error no pseudo-terminal");
    } else if (strcmp(verb, "reset") == 0 && words == 1) {
        controller_reset(&probe);
        say("ok");
    } else if (strcmp(verb, "stats") == 0 && words == 1) {
        stats();
    } else if (strcmp(verb, "quit") == 0 && words == 1) {
        say("ok");
        return false;
    } else {
        say("error no such command: press KEY, release KEY, tap KEY MILLIS, bounce KEY COUNT MICROS, "
            "touch NET KEY, lift, wait MILLIS, load FILE, unplug, cut BYTES, replug, reset, stats, quit");
    }
    return true;
}

/** Reads and does commands while none is under way; false at the end of the input. */
static bool commands(void) {
    static char text[LINE];
    static size_t length;
    static bool ended;
    while (!busy) {
        char *end = memchr(text, '\n', length);
        if (end != NULL || (ended && length > 0)) {
            size_t used = end != NULL ? (size_t)(end - text) + 1 : length;
            char line[LINE];
            memcpy(line, text, used);
            line[used < LINE ? used : LINE - 1] = 0;
            memmove(text, text + used, length -= used);
            if (!command(line)) return false;
            continue;
        }
        if (ended) return false;
        if (length == sizeof text - 1) length = 0;  // no command is that long
        struct pollfd look = {.fd = STDIN_FILENO, .events = POLLIN};
        if (poll(&look, 1, 0) <= 0) return true;
        ssize_t got = read(STDIN_FILENO, text + length, sizeof text - 1 - length);
        if (got <= 0) ended = true;
        if (got > 0) length += (size_t)got;
    }
    return true;
}

static double now(void) {
    struct timespec time;
    clock_gettime(CLOCK_MONOTONIC, &time);
    return (double)time.tv_sec + (double)time.tv_nsec * 1e-9;
}

/** Waits until the wall has caught up with the simulated clock; notes when the simulation is the slower one. */
static void keep_step(void) {
    static double start;
    static avr_cycle_count_t startCycle;
    double wall = now();
    if (start == 0) start = wall, startCycle = probe.avr->cycle;
    double ahead = (double)(probe.avr->cycle - startCycle) / (CYCLES_PER_MICRO * 1e6) - (wall - start);
    if (ahead > 0) {
        struct timespec pause = {(time_t)ahead, (long)((ahead - (double)(time_t)ahead) * 1e9)};
        nanosleep(&pause, NULL);
    } else if (ahead < -0.25) {
        // Behind by a quarter of a second: say by how much, and begin to count anew rather than hurry.
        double ratio = (wall - start) / ((wall - start) + ahead);
        if (ratio > slowest) slowest = ratio;
        start = wall, startCycle = probe.avr->cycle;
    }
}

int main(int count, char **words) {
    const char *wiring = NULL, *elf = NULL;
    double rise = 2.6;  // micros: 110 pF behind an ATmega32U4's weakest pull-up
    for (int i = 1; i < count; i++) {
        bool more = i + 1 < count;
        if (strcmp(words[i], "--wiring") == 0 && more) wiring = words[++i];
        else if (strcmp(words[i], "--link") == 0 && more) linkPath = words[++i];
        else if (strcmp(words[i], "--between") == 0 && more) betweenReadsLow = strcmp(words[++i], "low") == 0;
        else if (strcmp(words[i], "--rise") == 0 && more) rise = atof(words[++i]);
        else if (words[i][0] != '-' && elf == NULL) elf = words[i];
        else elf = NULL, i = count;
    }
    if (elf == NULL || wiring == NULL || linkPath == NULL) {
        die("use: bench SKETCH.elf --wiring FILE --link PATH [--between low|high] [--rise MICROS]");
    }
    signal(SIGPIPE, SIG_IGN);
    char error[LINE];
    board *b = board_read(wiring, betweenReadsLow, error, sizeof error);
    if (b == NULL) die("%s", error);
    if (!controller_load(&probe, elf, b, error, sizeof error)) die("%s", error);
    probe.riseCycles = (avr_cycle_count_t)(rise * CYCLES_PER_MICRO);
    probe.received = to_host;
    if (!plug()) die("%s: no pseudo-terminal can be linked there: %s", linkPath, strerror(errno));
    say("ok ready");
    for (int slice = 0;; slice++) {
        avr_cycle_count_t until = probe.avr->cycle + SLICE;
        while (probe.avr->cycle < until) {
            avr_cycle_count_t next = busy && nextMove < until ? nextMove : until;
            if (given < queued) {
                if (controller_send(&probe, queue[given])) given++;
                if (probe.nextByte < next) next = probe.nextByte;
            }
            if (!controller_run(&probe, next)) die("the sketch crashed at %x", probe.avr->pc);
            go_on();
        }
        if (slice % LOOK_EVERY != 0) continue;
        from_host();
        if (!commands()) break;
        keep_step();
    }
    if (pty >= 0) unplug();
    return 0;
}
