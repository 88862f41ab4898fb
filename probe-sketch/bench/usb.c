#include "usb.h"

#include <simavr/avr_usb.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { CONTROL = 0, TO_SKETCH = 2, FROM_SKETCH = 3, UDINT = 0xE1, SOFI = 1 << 2, UDIEN = 0xE2, GENERAL_VECTOR = 10 };
enum { FRAME = 16000, FETCH = FRAME / 19 };  // a full-speed frame holds nineteen bulk packets of 64 bytes

static void run(controller *c, avr_cycle_count_t until) {
    if (!controller_run(c, until)) {
        fprintf(stderr, "the sketch crashed at %x\n", c->avr->pc);
        exit(1);
    }
}

static void request(controller *c, const uint8_t *bytes) {
    uint8_t packet[64];
    memcpy(packet, bytes, 8);
    struct avr_io_usb setup = {.pipe = CONTROL, .sz = 8, .buf = packet};
    avr_ioctl(c->avr, AVR_IOCTL_USB_SETUP, &setup);
    run(c, c->avr->cycle + FRAME);
    struct avr_io_usb status = {.pipe = CONTROL, .sz = 0, .buf = packet};
    avr_ioctl(c->avr, AVR_IOCTL_USB_READ, &status);
    run(c, c->avr->cycle + FRAME);
}

void usb_plug(controller *c) {
    static const uint8_t CONFIGURE[8] = {0x00, 0x09, 1};
    avr_ioctl(c->avr, AVR_IOCTL_USB_VBUS, (void *)1);
    run(c, c->avr->cycle + 10 * FRAME);
    avr_ioctl(c->avr, AVR_IOCTL_USB_RESET, NULL);
    run(c, c->avr->cycle + 10 * FRAME);
    request(c, CONFIGURE);
}

static void begin_frame(controller *c) {
    c->avr->data[UDINT] |= SOFI;
    if (!(c->avr->data[UDIEN] & SOFI)) return;
    for (int i = 0; i < c->avr->interrupts.vector_count; i++) {
        avr_int_vector_t *vector = c->avr->interrupts.vector[i];
        if (vector->vector == GENERAL_VECTOR) avr_raise_interrupt(c->avr, vector);
    }
}

void usb_run(controller *c, avr_cycle_count_t until, bool reading) {
    static avr_cycle_count_t nextFrame, nextFetch;
    if (nextFrame > c->avr->cycle + FRAME) nextFrame = nextFetch = 0;  // another controller
    while (c->avr->cycle < until) {
        if (c->avr->cycle >= nextFrame) {
            begin_frame(c);
            nextFrame = c->avr->cycle + FRAME;
        }
        if (reading && c->avr->cycle >= nextFetch) {
            uint8_t packet[64];
            struct avr_io_usb in = {.pipe = FROM_SKETCH, .sz = sizeof packet, .buf = packet};
            int status = avr_ioctl(c->avr, AVR_IOCTL_USB_READ, &in);
            for (uint32_t i = 0; status == 0 && i < in.sz; i++) c->received(c->context, packet[i]);
            nextFetch = c->avr->cycle + FETCH;
        }
        avr_cycle_count_t next = reading && nextFetch < nextFrame ? nextFetch : nextFrame;
        run(c, next < until ? next : until);
    }
}

bool usb_send(controller *c, const char *bytes, size_t count) {
    uint8_t packet[64];
    memcpy(packet, bytes, count);
    struct avr_io_usb out = {.pipe = TO_SKETCH, .sz = (uint32_t)count, .buf = packet};
    return avr_ioctl(c->avr, AVR_IOCTL_USB_WRITE, &out) == 0;
}
