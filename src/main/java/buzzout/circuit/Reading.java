package buzzout.circuit;

/**
 * What a sweep should read.
 *
 * @param low the pairs that surely read low
 * @param between the pairs whose level lies between a sure low and a sure high, so that they may read either way
 */
public record Reading(Pairs low, Pairs between) {
    public static final Reading NOTHING = new Reading(Pairs.NONE, Pairs.NONE);

    // Not left to the record, whose own is slow until it is compiled: readings are numbered by the thousand.
    @Override
    public int hashCode() {
        return low.hashCode() * 31 + between.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Reading reading && low.equals(reading.low) && between.equals(reading.between);
    }

    /** Whether a sweep that read exactly these pairs low agrees. */
    public boolean agreesWith(Pairs seen) {
        return seen.containsAll(low) && low.plus(between).containsAll(seen);
    }
}
