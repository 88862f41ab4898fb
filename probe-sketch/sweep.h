// The sweep: drives every listed pin low in turn, reads all others, and notes what changed since the last one.
#pragma once
#include "changes.h"
#include "chip.h"

class Sweep {
   public:
    enum Refusal : uint8_t { NONE, NO_SUCH_PIN, TWICE, TOO_MANY };

    /** Adds a pin by its data-sheet name. */
    Refusal add(const char *name);
    void dropLast() { letGoFrom(count - 1); }
    void forget() { letGoFrom(0); }
    uint8_t pins() const { return count; }

    void settle(uint16_t micros) { settleTicks = micros * chip::TICKS_PER_MICRO - chip::TICKS_UNSEEN; }

    /** How many ticks a listed pin takes to read high once it is let go; more than the longest when it does not. */
    uint16_t rise(uint8_t index) const { return chip::rise(list[index], LONGEST_RISE); }
    /** So many ticks are the longest rise that a settle may be made for. */
    static constexpr uint16_t LONGEST_RISE = 500 * chip::TICKS_PER_MICRO;

    /**
     * In micros, twice what the slowest listed pin takes to rise. Pins that conduct into each other rise together, no
     * later than the slower would alone, so it is enough whatever is pressed. A pin that never rises does not count.
     */
    uint16_t measuredSettle() const;

    /** Learns the state that changes start from. Takes a millisecond more than a sweep, for the pull-ups to win. */
    void begin();

    /** Sweeps once. While each pin settles it calls talk(), which says whether it moved any bytes. */
    void run(bool (*talk)());

    bool closed(uint8_t low, uint8_t reads) const {
        return low != reads && !(state[low].port[list[reads].port] & list[reads].bit);
    }
    uint16_t closedPairs() const { return closedCount; }
    uint32_t sweeps() const { return sweepCount; }

    Changes changes;

   private:
    void letGoFrom(uint8_t first);
    void note(uint8_t low, chip::Reading now);

    chip::Pin list[chip::MOST_PINS + 1];  // the sweep fetches one too many
    chip::Reading state[chip::MOST_PINS];  // what each port read while a pin was low
    chip::Reading listed = {};
    uint8_t count = 0;
    uint16_t settleTicks = 0;
    uint16_t closedCount = 0;
    uint32_t sweepCount = 0;
    bool learning = false;
};
