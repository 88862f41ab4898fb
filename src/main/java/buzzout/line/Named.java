package buzzout.line;

import java.util.Optional;

/** What a command takes under a name, anywhere among its other words. */
public sealed interface Named permits Flag, Either, Option {
    /** Its short name, a dash and a letter. */
    Optional<String> letter();

    /** Its name, two dashes and a word. */
    String name();

    String description();

    /** Its name as help shows it, with what follows. */
    String shown();

    /** Whether this is a name of it. */
    default boolean isCalled(String word) {
        return name().equals(word) || letter().equals(Optional.of(word));
    }
}
