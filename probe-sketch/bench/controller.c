#include "controller.h"

#include <simavr/avr_ioport.h>
#include <simavr/avr_uart.h>
#include <simavr/sim_elf.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

enum { CLOCK = 16000000, MCUCR = 0x55, JTD = 0x80, UBRR1L = 0xCC, UBRR1H = 0xCD, UCSR1A = 0xC8, U2X1 = 0x02 };
static const char *const CHIP = "atmega32u4";
// Data addresses of the PIN registers, ports A to L; DDR and PORT follow each.
static const int PIN_REGISTERS[PORTS] = {0, 0x23, 0x26, 0x29, 0x2C, 0x2F};
static const uint8_t JTAG_PINS = 0xF0;  // of port F
enum { PORT_F = 5 };

static uint8_t direction(const controller *c, int port) { return c->avr->data[c->present[port] + 1]; }
static uint8_t output(const controller *c, int port) { return c->avr->data[c->present[port] + 2]; }

/** The simulator's own chatter would mix with our answers; only its errors matter. */
static void log_errors(avr_t *avr, const int level, const char *format, va_list arguments) {
    (void)avr;
    if (level == LOG_ERROR) vfprintf(stderr, format, arguments);
}

/** The pins that something pulls down at this moment, or nothing pulls up. */
static pins pulled_down(controller *c) {
    pins low = *board_grounded(c->board);
    int driven = 0;
    for (int port = 0; port < PORTS; port++) {
        if (!c->present[port]) continue;
        uint8_t joined = port == PORT_F && !c->jtagOff ? (uint8_t)~JTAG_PINS : 0xFF;
        uint8_t outputs = direction(c, port) & joined;
        uint8_t lows = outputs & (uint8_t)~output(c, port);
        low.port[port] |= lows | (uint8_t)~(output(c, port) | outputs);
        for (int bit = 0; bit < 8; bit++) {
            if (!(lows >> bit & 1)) continue;
            driven++;
            const pins *reached = board_low(c->board, port * 8 + bit);
            for (int i = 0; i < PORTS; i++) low.port[i] |= reached->port[i];
        }
    }
    if (driven > 1) c->drivenTogether++;
    if (driven == 0) c->drivenSince = 0;
    return low;
}

static avr_cycle_count_t rise_of(const controller *c, int pin) {
    double micros = board_rise(c->board, pin);
    return micros < 0 ? c->riseCycles : (avr_cycle_count_t)(micros * (CLOCK / 1e6) + 0.5);
}

static void pins_changed(controller *c) {
    pins low = pulled_down(c);
    for (int port = 0; port < PORTS; port++) {
        uint8_t rising = c->low.port[port] & (uint8_t)~low.port[port];
        for (int bit = 0; rising >> bit; bit++) {
            if (rising >> bit & 1) c->lowUntil[port * 8 + bit] = c->avr->cycle + rise_of(c, port * 8 + bit);
        }
    }
    c->low = low;
}

static int port_of(const controller *c, int address) {
    for (int port = 0; port < PORTS; port++) {
        if (c->present[port] && address >= c->present[port] && address < c->present[port] + 3) return port;
    }
    return -1;
}

static uint8_t read_pins(avr_t *avr, avr_io_addr_t address, void *context) {
    controller *c = context;
    int port = port_of(c, address);
    avr_cycle_count_t settled = avr->cycle - c->drivenSince;
    if (c->drivenSince != 0 && settled < c->shortestSettle) c->shortestSettle = settled;
    uint8_t level = (uint8_t)~c->low.port[port];
    for (int bit = 0; bit < 8; bit++) {
        if (c->lowUntil[port * 8 + bit] > avr->cycle) level &= (uint8_t)~(1 << bit);
    }
    return avr->data[address] = (level & (uint8_t)~direction(c, port)) | (output(c, port) & direction(c, port));
}

static void write_port(avr_t *avr, avr_io_addr_t address, uint8_t value, void *context) {
    controller *c = context;
    int port = port_of(c, address);
    uint8_t drivenBefore = direction(c, port) & (uint8_t)~output(c, port);
    avr->data[address] = value;
    uint8_t driven = direction(c, port) & (uint8_t)~output(c, port) & (uint8_t)~drivenBefore;
    for (int bit = 0; driven >> bit; bit++) {
        if (!(driven >> bit & 1)) continue;
        c->drives[port * 8 + bit]++;
        c->lastDrive[port * 8 + bit] = avr->cycle;
        c->drivenSince = avr->cycle;
    }
    if (direction(c, port) & output(c, port)) c->drivenHigh++;
    pins_changed(c);
}

static void write_mcucr(avr_t *avr, avr_io_addr_t address, uint8_t value, void *context) {
    controller *c = context;
    avr->data[address] = value;
    if (!(value & JTD)) return;
    if (c->jtdWritten != 0 && avr->cycle - c->jtdWritten <= 4) c->jtagOff = true;
    c->jtdWritten = avr->cycle;
}

static void byte_sent(avr_irq_t *irq, uint32_t value, void *context) {
    (void)irq;
    controller *c = context;
    c->bytesOut++;
    if (c->received) c->received(c->context, (uint8_t)value);
}

static void uart_room(avr_irq_t *irq, uint32_t value, void *context) {
    (void)irq, (void)value;
    ((controller *)context)->uartFull = false;
}

static void uart_full(avr_irq_t *irq, uint32_t value, void *context) {
    (void)irq, (void)value;
    ((controller *)context)->uartFull = true;
}

/** Takes over what the simulator does at one register. */
static void hook(controller *c, int address, avr_io_read_t read, avr_io_write_t write) {
    int io = AVR_DATA_TO_IO(address);
    if (read) c->avr->io[io].r.c = read, c->avr->io[io].r.param = c;
    if (write) c->avr->io[io].w.c = write, c->avr->io[io].w.param = c;
}

static void forget_pins(controller *c) {
    c->jtagOff = false;
    c->jtdWritten = 0;
    memset(c->lowUntil, 0, sizeof c->lowUntil);
    c->low = pulled_down(c);
}

bool controller_load(controller *c, const char *elf, board *b, char *error, size_t size) {
    memset(c, 0, sizeof *c);
    avr_global_logger_set(log_errors);
    elf_firmware_t firmware = {0};
    if (elf_read_firmware(elf, &firmware) != 0 || firmware.flash == NULL) {
        return snprintf(error, size, "%s: no AVR program; build it with make bench", elf), false;
    }
    c->avr = avr_make_mcu_by_name(CHIP);
    if (c->avr == NULL) return snprintf(error, size, "this libsimavr knows no %s", CHIP), false;
    avr_init(c->avr);
    c->avr->log = LOG_ERROR;
    firmware.frequency = CLOCK;
    avr_load_firmware(c->avr, &firmware);
    c->avr->run_cycle_limit = CLOCK / 10000;
    c->board = b;
    c->shortestSettle = UINT64_MAX;
    for (int port = 0; port < PORTS; port++) {
        c->present[port] = PIN_REGISTERS[port];
        if (!c->present[port]) continue;
        hook(c, c->present[port], read_pins, NULL);
        hook(c, c->present[port] + 1, NULL, write_port);
        hook(c, c->present[port] + 2, NULL, write_port);
    }
    hook(c, MCUCR, NULL, write_mcucr);
    uint32_t none = 0;
    avr_ioctl(c->avr, AVR_IOCTL_UART_SET_FLAGS('1'), &none);
    c->uart = avr_io_getirq(c->avr, AVR_IOCTL_UART_GETIRQ('1'), UART_IRQ_INPUT);
    avr_irq_register_notify(avr_io_getirq(c->avr, AVR_IOCTL_UART_GETIRQ('1'), UART_IRQ_OUTPUT), byte_sent, c);
    avr_irq_register_notify(avr_io_getirq(c->avr, AVR_IOCTL_UART_GETIRQ('1'), UART_IRQ_OUT_XON), uart_room, c);
    avr_irq_register_notify(avr_io_getirq(c->avr, AVR_IOCTL_UART_GETIRQ('1'), UART_IRQ_OUT_XOFF), uart_full, c);
    forget_pins(c);
    return true;
}

bool controller_run(controller *c, avr_cycle_count_t until) {
    while (c->avr->cycle < until) {
        int state = avr_run(c->avr);
        if (state == cpu_Crashed || state == cpu_Done) return false;
    }
    return true;
}

bool controller_send(controller *c, uint8_t byte) {
    const uint8_t *data = c->avr->data;
    avr_cycle_count_t divisor = data[UBRR1L] + 256u * (data[UBRR1H] & 0x0F) + 1;
    if (c->avr->cycle < c->nextByte) return false;
    c->nextByte = c->avr->cycle + 10 * divisor * (data[UCSR1A] & U2X1 ? 8 : 16);
    if (c->uartFull) {
        c->bytesRefused++;  // a wire does not wait
        return true;
    }
    c->bytesIn++;
    avr_raise_irq(c->uart, byte);
    return true;
}

void controller_board_changed(controller *c) { pins_changed(c); }

void controller_reset(controller *c) {
    avr_reset(c->avr);
    c->uartFull = false;
    forget_pins(c);
}

uint64_t controller_sweeps(const controller *c) {
    uint64_t most = 0;
    for (int pin = 0; pin < PINS; pin++) {
        if (c->drives[pin] > most) most = c->drives[pin];
    }
    return most;
}
