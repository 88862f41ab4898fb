package buzzout.probe;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * How long a pin is driven before the others are read.
 *
 * @param micros so many microseconds, or as long as the probe's own measurement of its pins says
 */
public record SettleTime(OptionalInt micros) {
    /** Enough for the longest test lead on the weakest pull-up (CHECKS.md section 3: 15 µs at worst on usual boards). */
    public static final SettleTime USUAL = of(15);

    /** Measured at the start. */
    public static final SettleTime MEASURED = new SettleTime(OptionalInt.empty());

    private static final String AUTO = "auto";
    private static final int LONGEST = 1000;

    static SettleTime of(int micros) {
        return new SettleTime(OptionalInt.of(micros));
    }

    /** {@code auto}, or a number of microseconds from 1 to 1000. */
    public static Optional<SettleTime> parse(String text) {
        if (text.equals(AUTO)) {
            return Optional.of(MEASURED);
        }
        return text.matches("[1-9][0-9]{0,3}") && Integer.parseInt(text) <= LONGEST
                ? Optional.of(of(Integer.parseInt(text)))
                : Optional.empty();
    }

    Handshake.Step step() {
        return micros.isPresent()
                ? new Handshake.Step("settle " + micros.getAsInt(), "ok settle " + micros.getAsInt())
                : new Handshake.Step("settle " + AUTO, "ok settle");
    }
}
