package buzzout.circuit;

/**
 * The pins on both sides of a pressed key, as bit sets.
 *
 * @param driven those that pull the others low
 * @param reading the others
 * @param andBack whether these pull those low too
 */
public record Across(long driven, long reading, boolean andBack) {
    public static final Across NOTHING = new Across(0, 0, false);

    public Across {
        if (driven == 0 || reading == 0) {
            driven = 0;
            reading = 0;
            andBack = false;
        }
    }

    @Override
    public int hashCode() {
        return Long.hashCode((driven * 31 + reading) * 0x9E3779B97F4A7C15L);
    }
}
