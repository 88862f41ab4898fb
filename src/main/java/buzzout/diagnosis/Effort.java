package buzzout.diagnosis;

import java.util.function.BooleanSupplier;

/**
 * How long a weighing may look.
 *
 * @param forOne branches expanded to explain one term, at most
 * @param forAll branches expanded to explain several terms, or to find what could stand in for a fault, at most
 * @param thorough whether it looks in several ways and until nothing better turns up
 * @param isOverdue whether something more urgent waits, so that the weighing is to be given up
 */
record Effort(int forOne, int forAll, boolean thorough, BooleanSupplier isOverdue) {
    /** What a hand does not feel. */
    static final Effort GLANCE = new Effort(8, 8, false, () -> false);

    static Effort thorough(BooleanSupplier isOverdue) {
        return new Effort(25, 100, true, isOverdue);
    }
}
