package buzzout.report;

/** A probability in words and percent. */
public final class Likelihood {
    private Likelihood() {}

    /** Such as {@code very likely (93 %)}. */
    public static String inWords(double probability) {
        return word(probability) + " (" + percent(probability) + ")";
    }

    private static String word(double probability) {
        if (probability >= 0.99) {
            return "almost certain";
        }
        if (probability >= 0.9) {
            return "very likely";
        }
        if (probability >= 0.6) {
            return "likely";
        }
        return probability >= 0.2 ? "possible" : "unlikely";
    }

    /** Whole percent; never 0 or 100, because the model's word is never final. */
    public static String percent(double probability) {
        if (probability < 0.01) {
            return "under 1 %";
        }
        return probability > 0.99 ? "over 99 %" : Math.round(100 * probability) + " %";
    }
}
