package buzzout.session;

/** A way of summing up elements that are taken in one after another. Two that are equal come to equal sums. */
interface Summing<T, S extends Summing.Sum<T, S>> {
    /** What no element comes to. */
    S nothing();

    /** What the elements taken in so far come to. It changes with each that is taken in, a copy of it does not. */
    interface Sum<T, S> {
        void take(T element);

        S copy();
    }
}
