package buzzout.line;

/** How often something may be given. */
enum Times {
    ONCE(true, false),
    AT_MOST_ONCE(false, false),
    AT_LEAST_ONCE(true, true),
    ANY(false, true);

    private final boolean needed;
    private final boolean many;

    Times(boolean needed, boolean many) {
        this.needed = needed;
        this.many = many;
    }

    /** Whether it must be there. */
    boolean needed() {
        return needed;
    }

    /** Whether it may be there more than once. */
    boolean many() {
        return many;
    }
}
