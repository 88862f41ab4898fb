package buzzout.diagnosis;

/** How many branches may still be expanded; counted and not timed, so that a replay comes to the same. */
final class Patience {
    private int left;

    Patience(int branches) {
        left = branches;
    }

    /** Asked once for each branch. */
    boolean isSpent() {
        return left-- <= 0;
    }

    boolean wasSpent() {
        return left < 0;
    }
}
