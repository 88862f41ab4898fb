package buzzout.plan;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that was probably meant. */
public final class Nearest {
    private Nearest() {}

    /** The name with the fewest changed letters, where those are few for its length. */
    public static Optional<String> to(String meant, Collection<String> names) {
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

    /** Letters to add, drop, change or swap with the next to make one of the other (optimal string alignment). */
    static int changes(String from, String to) {
        int[][] changes = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                if (i == 0 || j == 0) {
                    changes[i][j] = i + j;
                    continue;
                }
                boolean same = from.charAt(i - 1) == to.charAt(j - 1);
                int dropped = Math.min(changes[i - 1][j], changes[i][j - 1]) + 1;
                changes[i][j] = Math.min(dropped, changes[i - 1][j - 1] + (same ? 0 : 1));
                boolean swapped = i > 1
                        && j > 1
                        && from.charAt(i - 1) == to.charAt(j - 2)
                        && from.charAt(i - 2) == to.charAt(j - 1);
                if (swapped) {
                    changes[i][j] = Math.min(changes[i][j], changes[i - 2][j - 2] + 1);
                }
            }
        }
        return changes[from.length()][to.length()];
    }
}
