// The changes that the host has not been told yet.
#pragma once
#include <stdint.h>

struct Change {
    uint32_t micros;
    uint8_t low;
    uint8_t reads : 7;
    uint8_t closed : 1;
};

/**
 * A ring of changes in the order they were seen. When it is full, changes are only counted; so are all later ones until
 * the host has read the ring to its end and can be told how many it missed.
 */
class Changes {
   public:
    void clear() { begin = count = 0, told = lost = 0; }

    void add(const Change &change) {
        if (lost > 0 || count == CAPACITY) {
            lost++;
        } else {
            ring[(begin + count++) % CAPACITY] = change;
        }
    }

    bool empty() const { return count == 0; }

    /** The oldest change, which has the number told() afterwards. */
    const Change &take() {
        const Change &oldest = ring[begin];
        begin = (begin + 1) % CAPACITY;
        count--;
        told++;
        return oldest;
    }

    uint32_t missed() const { return lost; }

    /** Owns up to the missed changes: told() passes them all. */
    void forgive() { told += lost, lost = 0; }

    /** The number of the last change that the host knows of, from 1 at each start, modulo 2^32. */
    uint32_t toldUpTo() const { return told; }

   private:
    static constexpr uint8_t CAPACITY = 32;  // a power of two
    Change ring[CAPACITY];
    uint8_t begin = 0;
    uint8_t count = 0;
    uint32_t told = 0;
    uint32_t lost = 0;
};
