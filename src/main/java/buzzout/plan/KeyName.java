package buzzout.plan;

import java.util.Optional;

/** What a key or a net may be called. */
final class KeyName {
    /** In code points. */
    static final int LONGEST = 24;

    private KeyName() {}

    /** Why a name will not do, where it will not. */
    static Optional<String> fault(String name) {
        if (name.isEmpty()) {
            return Optional.of("is empty; give it at least one character");
        }
        if (name.codePointCount(0, name.length()) > LONGEST) {
            return Optional.of("is longer than " + LONGEST + " characters; shorten it");
        }
        if (name.contains(" ")) {
            return Optional.of("has a space in it; take it out");
        }
        if (!Visible.prints(name)) {
            return Optional.of("has a character that does not print; take it out");
        }
        return Optional.empty();
    }
}
