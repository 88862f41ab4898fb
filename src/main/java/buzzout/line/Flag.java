package buzzout.line;

import java.util.Optional;

/** A name that is there or is not. */
public record Flag(Optional<String> letter, String name, String description) implements Named {
    /** Every command takes it. */
    public static final Flag HELP = of("-h", "--help", "Show this help.");

    public static Flag of(String name, String description) {
        return new Flag(Optional.empty(), name, description);
    }

    public static Flag of(String letter, String name, String description) {
        return new Flag(Optional.of(letter), name, description);
    }

    @Override
    public String shown() {
        return name;
    }
}
