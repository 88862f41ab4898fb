#include "board.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { LONGEST_NAME = 48, UNREACHED = 1000 };

typedef struct {
    int from, to;
    int key;  // of a switch; -1 for a wire
} part;

typedef struct {
    part *list;
    int count;
} parts;

typedef struct {
    char (*list)[LONGEST_NAME];
    int count;
} names;

struct board {
    names nodes, keys, joints;  // a joint is named by its net and its key
    parts wires, diodes;
    parts grounds, leds;  // from is the node
    int *jointNode;       // by joint
    bool *pressed;        // by key
    int nodeOf[PINS];     // -1 where nothing is joined
    int spare;            // the flying lead's pin, or -1
    int touched;          // the node that the flying lead touches, or -1
    bool betweenReadsLow;
    double rise[PINS];    // micros, or -1
    pins low[PINS];
    pins grounded;
};

static void *grow(void *list, int count, size_t size) {
    void *grown = realloc(list, (size_t)(count + 1) * size);
    if (grown == NULL) abort();
    return grown;
}

static int named(names *all, const char *name, bool addIt) {
    for (int i = 0; i < all->count; i++) {
        if (strcmp(all->list[i], name) == 0) return i;
    }
    if (!addIt) return -1;
    all->list = grow(all->list, all->count, sizeof *all->list);
    strcpy(all->list[all->count], name);
    return all->count++;
}

static void add(parts *all, int from, int to, int key) {
    all->list = grow(all->list, all->count, sizeof *all->list);
    all->list[all->count++] = (part){from, to, key};
}

int pin_number(const char *name) {
    bool good = name[0] >= 'A' && name[0] <= 'L' && name[1] >= '0' && name[1] <= '7' && name[2] == 0;
    return good ? (name[0] - 'A') * 8 + name[1] - '0' : -1;
}

static int lump(int *parent, int node) {
    while (parent[node] != node) node = parent[node] = parent[parent[node]];
    return node;
}

/** The fewest diodes that a current from one lump passes to each other lump. */
static void count_diodes(const board *b, int *parent, int from, int *fewest) {
    for (int i = 0; i < b->nodes.count; i++) fewest[i] = UNREACHED;
    fewest[from] = 0;
    for (bool changed = true; changed;) {
        changed = false;
        for (int d = 0; d < b->diodes.count; d++) {
            int anode = lump(parent, b->diodes.list[d].from), cathode = lump(parent, b->diodes.list[d].to);
            if (fewest[anode] + 1 < fewest[cathode]) {
                fewest[cathode] = fewest[anode] + 1;
                changed = true;
            }
        }
    }
}

static void solve(board *b) {
    int nodes = b->nodes.count;
    int *parent = calloc((size_t)nodes + 1, sizeof *parent), *fewest = calloc((size_t)nodes + 1, sizeof *fewest);
    if (parent == NULL || fewest == NULL) abort();
    for (int i = 0; i < nodes; i++) parent[i] = i;
    for (int i = 0; i < b->wires.count; i++) {
        part w = b->wires.list[i];
        if (w.key < 0 || b->pressed[w.key]) parent[lump(parent, w.from)] = lump(parent, w.to);
    }
    if (b->touched >= 0) parent[lump(parent, b->nodeOf[b->spare])] = lump(parent, b->touched);
    memset(b->low, 0, sizeof b->low);
    memset(&b->grounded, 0, sizeof b->grounded);
    int limit = b->betweenReadsLow ? UNREACHED - 1 : 1;
    for (int reads = 0; reads < PINS; reads++) {
        if (b->nodeOf[reads] < 0) continue;
        int port = reads / 8;
        uint8_t bit = (uint8_t)(1 << reads % 8);
        int from = lump(parent, b->nodeOf[reads]);
        count_diodes(b, parent, from, fewest);
        for (int low = 0; low < PINS; low++) {
            if (b->nodeOf[low] >= 0 && fewest[lump(parent, b->nodeOf[low])] <= limit) b->low[low].port[port] |= bit;
        }
        for (int g = 0; g < b->grounds.count; g++) {
            if (fewest[lump(parent, b->grounds.list[g].from)] <= limit) b->grounded.port[port] |= bit;
        }
        for (int l = 0; l < b->leds.count && b->betweenReadsLow; l++) {
            if (lump(parent, b->leds.list[l].from) == from) b->grounded.port[port] |= bit;
        }
    }
    free(parent);
    free(fewest);
}

/** A net's name has no space, so that the two together name one joint. */
static void joint_name(char *name, const char *net, const char *key) {
    snprintf(name, LONGEST_NAME, "%.20s %.26s", net, key);
}

static void add_joint(board *b, const char *net, const char *key, int node) {
    char name[LONGEST_NAME];
    joint_name(name, net, key);
    int joint = named(&b->joints, name, true);
    b->jointNode = grow(b->jointNode, joint, sizeof *b->jointNode);
    b->jointNode[joint] = node;
}

static bool read_rise(double *rise, const char *micros, char *why, size_t size) {
    char *end;
    *rise = strtod(micros, &end);
    if (*end == 0 && *rise >= 0 && *rise <= 1e6) return true;
    return snprintf(why, size, "\"%s\" is no time in microseconds up to a second", micros), false;
}

/** Takes one line of a wiring file in; false with a sentence in why. */
static bool take_line(board *b, char *line, char *why, size_t size) {
    line[strcspn(line, "#\r\n")] = 0;
    char *word[5];
    int words = 0;
    for (char *next = strtok(line, " \t"); next != NULL && words < 5; next = strtok(NULL, " \t")) {
        if (strlen(next) >= LONGEST_NAME) return snprintf(why, size, "%.20s... is longer than 47 bytes", next), false;
        word[words++] = next;
    }
    if (words == 0) return true;
    const char *verb = word[0];
    bool isPin = strcmp(verb, "pin") == 0, isSpare = strcmp(verb, "spare") == 0;
    bool isJoint = strcmp(verb, "joint") == 0, isRise = strcmp(verb, "rise") == 0;
    int wanted = isJoint || strcmp(verb, "switch") == 0                                            ? 4
                 : isPin || isSpare || isRise || strcmp(verb, "wire") == 0 || strcmp(verb, "diode") == 0 ? 3
                 : strcmp(verb, "ground") == 0 || strcmp(verb, "led") == 0                     ? 2
                                                                                               : 0;
    if (wanted == 0) {
        return snprintf(why, size, "\"%s\" is none of pin, spare, rise, joint, wire, diode, switch, ground, led", verb),
               false;
    }
    if (words != wanted) return snprintf(why, size, "%s takes %d words after it, not %d", verb, wanted - 1, words - 1), false;
    if (isPin || isSpare || isRise) {
        int pin = pin_number(word[1]);
        if (pin < 0) return snprintf(why, size, "\"%s\" is no pin; pins are named like F4", word[1]), false;
        if (isRise) return read_rise(&b->rise[pin], word[2], why, size);
        if (b->nodeOf[pin] >= 0) return snprintf(why, size, "pin %s is joined twice; use wire for more", word[1]), false;
        b->nodeOf[pin] = named(&b->nodes, word[2], true);
        if (isSpare) b->spare = pin;
        return true;
    }
    if (isJoint) return add_joint(b, word[1], word[2], named(&b->nodes, word[3], true)), true;
    int last = named(&b->nodes, word[words - 1], true);
    int before = words > 2 ? named(&b->nodes, word[words - 2], true) : last;
    switch (verb[0]) {
        case 'g': add(&b->grounds, last, last, -1); break;
        case 'l': add(&b->leds, last, last, -1); break;
        case 'd': add(&b->diodes, before, last, -1); break;
        case 'w': add(&b->wires, before, last, -1); break;
        default: add(&b->wires, before, last, named(&b->keys, word[1], true));
    }
    return true;
}

board *board_read(const char *path, bool betweenReadsLow, char *error, size_t size) {
    FILE *file = fopen(path, "r");
    if (file == NULL) return snprintf(error, size, "%s: cannot be read", path), NULL;
    board *b = calloc(1, sizeof *b);
    if (b == NULL) abort();
    b->betweenReadsLow = betweenReadsLow;
    for (int pin = 0; pin < PINS; pin++) b->nodeOf[pin] = -1, b->rise[pin] = -1;
    b->spare = b->touched = -1;
    char line[512], why[256];
    bool good = true;
    for (int number = 1; good && fgets(line, sizeof line, file) != NULL; number++) {
        good = take_line(b, line, why, sizeof why);
        if (!good) snprintf(error, size, "%s:%d: %s", path, number, why);
    }
    fclose(file);
    b->pressed = calloc((size_t)b->keys.count + 1, sizeof *b->pressed);
    if (b->pressed == NULL) abort();
    if (!good) return board_free(b), NULL;
    solve(b);
    return b;
}

void board_free(board *b) {
    if (b == NULL) return;
    free(b->nodes.list);
    free(b->keys.list);
    free(b->joints.list);
    free(b->jointNode);
    free(b->wires.list);
    free(b->diodes.list);
    free(b->grounds.list);
    free(b->leds.list);
    free(b->pressed);
    free(b);
}

bool board_press(board *b, const char *key, bool pressed) {
    int k = named(&b->keys, key, false);
    if (k < 0) return false;
    b->pressed[k] = pressed;
    solve(b);
    return true;
}

void board_hold_like(board *b, const board *other) {
    for (int key = 0; key < other->keys.count; key++) {
        if (other->pressed[key]) board_press(b, other->keys.list[key], true);
    }
}

bool board_touch(board *b, const char *net, const char *key) {
    char name[LONGEST_NAME];
    joint_name(name, net, key);
    int joint = named(&b->joints, name, false);
    if (joint < 0 || b->spare < 0) return false;
    b->touched = b->jointNode[joint];
    solve(b);
    return true;
}

void board_lift(board *b) {
    b->touched = -1;
    solve(b);
}

bool board_has(const board *b, const char *key) { return named((names *)&b->keys, key, false) >= 0; }

bool board_pressed(const board *b, const char *key) {
    int k = named((names *)&b->keys, key, false);
    return k >= 0 && b->pressed[k];
}

const pins *board_low(const board *b, int driven) { return &b->low[driven]; }
double board_rise(const board *b, int pin) { return b->rise[pin]; }
const pins *board_grounded(const board *b) { return &b->grounded; }
