#include "expect.h"

#include <stdio.h>
#include <string.h>

static const char *elf;
static const char *testing;
static int failures;

const char SQUARE[] =
    "pin F4 row0\npin F5 row1\npin B0 column0\npin B1 column1\n"
    "switch a column0 ia\ndiode ia row0\nswitch b column1 ib\ndiode ib row0\n"
    "switch c column0 ic\ndiode ic row1\nswitch d column1 id\ndiode id row1\n";

const char *sketch(void) { return elf; }

static void fail(const char *what, const char *got, const char *wanted) {
    printf("FAILED %s: %s\n  got    %s\n  wanted %s\n", testing, what, got ? got : "nothing", wanted);
    failures++;
}

void check(bool holds, const char *what) {
    if (!holds) fail(what, "false", "true");
}

bool matches(const char *line, const char *pattern) {
    for (; *pattern; pattern++) {
        if (*pattern == '#') {
            if (*line < '0' || *line > '9') return false;
            while (*line >= '0' && *line <= '9') line++;
        } else if (*line++ != *pattern) {
            return false;
        }
    }
    return *line == 0;
}

void expect(controller *c, const char *pattern) {
    const char *line = NULL;
    for (int beats = 0; beats < 8; beats++) {
        line = next_line(c);
        if (line == NULL || strncmp(line, "beat ", 5) != 0 || strncmp(pattern, "beat ", 5) == 0) break;
    }
    if (line == NULL || !matches(line, pattern)) fail("a line", line, pattern);
}

void ask(controller *c, const char *body, const char *answer) {
    tell(c, body);
    expect(c, answer);
}

void expect_silence(controller *c, int millis) {
    pass(c, (avr_cycle_count_t)millis * MILLI);
    tell(c, "settle 10");
    expect(c, "ok settle 10");
}

controller *started(const char *wiring) {
    controller *c = dialogue_start(elf, wiring);
    expect(c, "iam 1 0.1.0 ATmega32U4 24 16000000");
    return c;
}

controller *sweeping_square(void) {
    controller *c = started(SQUARE);
    ask(c, "add F4 F5 B0 B1", "ok add 4");
    ask(c, "go", "ok go 4");
    expect(c, "full 0 # 0");
    return c;
}

static void believe(belief *b, const char *line) {
    unsigned long seq, micros, count;
    unsigned low, reads;
    if (sscanf(line, "= %u %u", &low, &reads) == 2) {
        b->gathered[low][reads] = true;
    } else if (sscanf(line, "full %lu %lu %lu", &seq, &micros, &count) == 3) {
        if (seq != b->seq) b->wrong = true;
        unsigned long closed = 0;
        for (int i = 0; i < USB_PINS * USB_PINS; i++) closed += b->gathered[i / USB_PINS][i % USB_PINS];
        if (closed != count) b->wrong = true;
        memcpy(b->closed, b->gathered, sizeof b->closed);
        memset(b->gathered, 0, sizeof b->gathered);
        b->full++;
    } else if (sscanf(line, "lost %lu %lu", &seq, &count) == 2) {
        if (seq != b->seq + count) b->wrong = true;
        b->seq = seq;
        b->lost += count;
    } else if ((line[0] == '+' || line[0] == '-') && sscanf(line + 2, "%lu %lu %u %u", &seq, &micros, &low, &reads) == 4) {
        if (seq != b->seq + 1 || b->closed[low][reads] == (line[0] == '+')) b->wrong = true;
        b->seq = seq;
        b->closed[low][reads] = line[0] == '+';
        b->changes++;
    } else if (sscanf(line, "beat %lu %lu %*u %lu", &seq, &micros, &count) == 3) {
        unsigned long closed = 0;
        for (int i = 0; i < USB_PINS * USB_PINS; i++) closed += b->closed[i / USB_PINS][i % USB_PINS];
        if (seq != b->seq || closed != count) b->wrong = true;
    }
}

void believe_all(controller *c, belief *b) {
    const char *line;
    for (int beats = 0, lines = 0; beats < 3 && lines < 100000 && (line = next_line(c)) != NULL; lines++) {
        believe(b, line);
        beats = strncmp(line, "beat", 4) == 0 ? beats + 1 : 0;
    }
}

int run_tests(int count, char **words, const test *tests, size_t number) {
    if (count < 2) return fprintf(stderr, "use: %s SKETCH.elf [PART OF A NAME]\n", words[0]), 2;
    elf = words[1];
    int run = 0;
    for (size_t i = 0; i < number; i++) {
        if (count > 2 && strstr(tests[i].name, words[2]) == NULL) continue;
        testing = tests[i].name;
        printf("%s\n", testing);
        fflush(stdout);
        tests[i].run();
        run++;
    }
    printf("%d tests of the sketch, %d failures\n", run, failures);
    if (failures > 0 || run == 0) return 1;
    puts("all good");
    return 0;
}
