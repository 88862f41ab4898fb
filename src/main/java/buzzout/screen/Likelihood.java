package buzzout.screen;

/** Probabilities in words, with the number beside them. */
final class Likelihood {
    private Likelihood() {}

    /** Such as {@code very likely, 94 %}. Never certain, never impossible. */
    static String of(double probability) {
        return word(probability) + ", " + percent(probability);
    }

    static String percent(double probability) {
        long percent = Math.round(probability * 100);
        return percent >= 100 ? "over 99 %" : percent <= 0 ? "under 1 %" : percent + " %";
    }

    private static String word(double probability) {
        if (probability >= 0.98) {
            return "almost certain";
        } else if (probability >= 0.85) {
            return "very likely";
        } else if (probability >= 0.6) {
            return "likely";
        } else if (probability >= 0.4) {
            return "even chances";
        } else if (probability >= 0.1) {
            return "possible";
        }
        return "unlikely";
    }
}
