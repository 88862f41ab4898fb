package buzzout.line;

import java.util.Optional;

/**
 * A name with a value.
 *
 * @param label what help calls the value
 */
public record Option(Optional<String> letter, String name, String label, Times times, String description)
        implements Named {
    /** One that may be left out. */
    public static Option of(String name, String label, String description) {
        return new Option(Optional.empty(), name, label, Times.AT_MOST_ONCE, description);
    }

    /** One that must be there. */
    public static Option needed(String name, String label, String description) {
        return new Option(Optional.empty(), name, label, Times.ONCE, description);
    }

    /** One that takes all words up to the next name, and may be there again. */
    public static Option many(String name, String label, String description) {
        return new Option(Optional.empty(), name, label, Times.ANY, description);
    }

    /** The same with a short name. */
    public Option or(String shortName) {
        return new Option(Optional.of(shortName), name, label, times, description);
    }

    @Override
    public String shown() {
        return name + valueShown();
    }

    String valueShown() {
        return "=" + label + (times.many() ? "..." : "");
    }
}
