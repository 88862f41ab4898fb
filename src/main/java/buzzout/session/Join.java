package buzzout.session;

import buzzout.circuit.Pair;

/**
 * What one key joined when it was pressed.
 *
 * @param key index into the plan's keys
 * @param pair the pins, current flowing from {@code reads} to {@code low}
 * @param bothWays whether it conducted the other way too, so that the direction says nothing
 */
record Join(int key, Pair pair, boolean bothWays) {
    boolean touches(int pin) {
        return pair.low() == pin || pair.reads() == pin;
    }

    boolean joinsTheSameAs(Join other) {
        return touches(other.pair.low()) && touches(other.pair.reads());
    }
}
