package buzzout.line;

import java.util.Optional;

/** A name that says yes, and no with {@code no-} before it. */
public record Either(String name, String description) implements Named {
    public static Either of(String name, String description) {
        return new Either(name, description);
    }

    @Override
    public Optional<String> letter() {
        return Optional.empty();
    }

    @Override
    public String shown() {
        return "--[no-]" + name.substring(2);
    }

    @Override
    public boolean isCalled(String word) {
        return word.equals(name) || word.equals(no());
    }

    /** The name that says no. */
    String no() {
        return "--no-" + name.substring(2);
    }
}
