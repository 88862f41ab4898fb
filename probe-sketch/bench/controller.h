// The simulated microcontroller that executes the sketch, with a board on its pins and its serial bytes in hand.
#pragma once
#include <simavr/sim_avr.h>

#include "board.h"

typedef struct {
    avr_t *avr;
    board *board;
    avr_cycle_count_t riseCycles;  // how long a pin reads low when nothing pulls it down any more, unless the board says

    void (*received)(void *context, uint8_t byte);  // what the sketch sent
    void *context;

    // What was seen on the pins.
    uint64_t drives[PINS];             // how often each was driven low
    avr_cycle_count_t lastDrive[PINS];  // and when last
    avr_cycle_count_t shortestSettle;   // from driving a pin to reading the next port
    uint64_t drivenHigh;               // must stay 0
    uint64_t drivenTogether;           // must stay 0
    bool jtagOff;                      // JTD was written twice within four cycles
    uint64_t bytesIn, bytesOut, bytesRefused;

    // Inner life.
    avr_irq_t *uart;
    bool uartFull;
    avr_cycle_count_t byteCycles, nextByte;
    avr_cycle_count_t jtdWritten;
    pins low;
    avr_cycle_count_t drivenSince;  // 0 while no pin is
    avr_cycle_count_t lowUntil[PINS];
    int present[PORTS];  // data address of each port's PIN register, 0 where the chip has none
} controller;

/** Loads an ELF for an ATmega32U4 whose sketch talks over USART1; false with a sentence in error. */
bool controller_load(controller *c, const char *elf, board *b, char *error, size_t size);

/** Runs until the given cycle; false when the program crashed. */
bool controller_run(controller *c, avr_cycle_count_t until);

/** Gives the sketch one byte when its wire is free; false otherwise. */
bool controller_send(controller *c, uint8_t byte);

/** Tells that the board changed under the pins. */
void controller_board_changed(controller *c);

void controller_reset(controller *c);

/** Full sweeps so far: what the pin driven most often tells. */
uint64_t controller_sweeps(const controller *c);
