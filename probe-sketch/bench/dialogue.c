#include "dialogue.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "usb.h"

// One dialogue at a time: what the sketch has sent and nobody has read.
static char *inbox;
static size_t arrived, taken, room;
static int bad;
static bool usb, listening;

static void keep(void *context, uint8_t byte) {
    (void)context;
    if (arrived == room) inbox = realloc(inbox, room = room * 2 + 4096);
    if (inbox == NULL) abort();
    inbox[arrived++] = (char)byte;
}

// Bit by bit on purpose, as the standard describes it: the sketch does it another way.
uint16_t crc_of(const char *body) {
    uint16_t crc = 0;
    for (; *body; body++) {
        crc ^= (uint16_t)((uint8_t)*body << 8);
        for (int bit = 0; bit < 8; bit++) crc = (uint16_t)(crc & 0x8000 ? crc << 1 ^ 0x1021 : crc << 1);
    }
    return crc;
}

controller *dialogue_start(const char *elf, const char *wiring) {
    char path[] = "/tmp/wiringXXXXXX", error[300];
    int file = mkstemp(path);
    FILE *out = file < 0 ? NULL : fdopen(file, "w");
    controller *c = calloc(1, sizeof *c);
    if (out == NULL || c == NULL) abort();
    fputs(wiring, out);
    fclose(out);
    board *b = board_read(path, false, error, sizeof error);
    remove(path);
    arrived = taken = 0;
    bad = 0;
    usb = false;
    if (b == NULL || !controller_load(c, elf, b, error, sizeof error)) {
        fprintf(stderr, "%s\n", error);
        exit(2);
    }
    c->received = keep;
    c->riseCycles = 26 * MICRO / 10;
    return c;
}

void dialogue_end(controller *c) {
    board_free(c->board);
    avr_terminate(c->avr);
    free(c->avr);
    free(c);
}

void over_usb(controller *c) {
    usb_plug(c);
    usb = listening = true;
}

void listen_to_usb(bool listen) { listening = listen; }

void pass(controller *c, avr_cycle_count_t cycles) {
    if (usb) {
        usb_run(c, c->avr->cycle + cycles, listening);
        return;
    }
    if (!controller_run(c, c->avr->cycle + cycles)) {
        fprintf(stderr, "the sketch crashed at %x\n", c->avr->pc);
        exit(1);
    }
}

void tell_bytes(controller *c, const char *bytes, size_t count) {
    for (size_t i = 0; usb && i < count;) {
        size_t packet = count - i < 64 ? count - i : 64;
        if (usb_send(c, bytes + i, packet)) i += packet;
        pass(c, 100 * MICRO);
    }
    for (size_t i = 0; !usb && i < count;) {
        if (controller_send(c, (uint8_t)bytes[i])) i++;
        else pass(c, c->nextByte - c->avr->cycle);
    }
}

void tell(controller *c, const char *body) {
    char line[4 * LONGEST];
    int length = snprintf(line, sizeof line, "%s*%04X\n", body, crc_of(body));
    tell_bytes(c, line, (size_t)length);
}

void hold(controller *c, const char *key, bool pressed) {
    if (!board_press(c->board, key, pressed)) {
        fprintf(stderr, "no key %s\n", key);
        exit(2);
    }
    controller_board_changed(c);
}

const char *next_line(controller *c) {
    static char line[LONGEST];
    for (int wait = 0; wait < 10000; wait++) {
        char *end = arrived > taken ? memchr(inbox + taken, '\n', arrived - taken) : NULL;
        if (end == NULL) {
            pass(c, 100 * MICRO);
            continue;
        }
        size_t length = (size_t)(end - inbox) - taken;
        memcpy(line, inbox + taken, length < LONGEST ? length : LONGEST - 1);
        line[length < LONGEST ? length : LONGEST - 1] = 0;
        taken += length + 1;
        char *star = strrchr(line, '*');
        if (star != NULL) {
            char digits[8];
            *star = 0;
            snprintf(digits, sizeof digits, "%04X", crc_of(line));
            if (strcmp(digits, star + 1) == 0) return line;
        }
        bad++;
    }
    return NULL;
}

void skip_lines(controller *c) {
    (void)c;
    taken = arrived;
}

int bad_lines(void) { return bad; }
