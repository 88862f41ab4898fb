package buzzout.plan;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that was probably meant. */
final class Nearest {
    private Nearest() {}

    /** The name with the fewest changed letters, where those are few for its length. */
    static Optional<String> to(String meant, Collection<String> names) {
        if (meant.length() > KeyName.LONGEST) {
            return Optional.empty();
        }
        String best = null;
        int fewest = Math.max(1, meant.length() / 3) + 1;
        for (String name : names) {
            if (Math.abs(name.length() - meant.length()) < fewest) {
                int changes = changes(meant.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
                if (changes < fewest && changes < name.length()) {
                    fewest = changes;
                    best = name;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Letters to add, drop or change to make one of the other (Levenshtein 1965). */
    static int changes(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int changed = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[to.length()];
    }
}
