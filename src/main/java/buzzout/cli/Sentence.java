package buzzout.cli;

import java.util.Locale;

/** Makes a clause a sentence. */
final class Sentence {
    private Sentence() {}

    static String of(String clause) {
        if (clause.isEmpty()) {
            return clause;
        }
        String ended = ".!?".indexOf(clause.charAt(clause.length() - 1)) >= 0 ? clause : clause + ".";
        return ended.substring(0, 1).toUpperCase(Locale.ROOT) + ended.substring(1);
    }
}
