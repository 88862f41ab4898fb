package buzzout.toml;

import java.util.OptionalDouble;

/** What a word is worth as a number. */
final class Numeral {
    private Numeral() {}

    /** Nothing where it is none, or a whole one that does not fit into 64 bits. */
    static OptionalDouble value(String word) {
        String unsigned = word.startsWith("+") || word.startsWith("-") ? word.substring(1) : word;
        double sign = word.startsWith("-") ? -1 : 1;
        if (unsigned.equals("inf")) {
            return OptionalDouble.of(sign * Double.POSITIVE_INFINITY);
        }
        if (unsigned.equals("nan")) {
            return OptionalDouble.of(Double.NaN);
        }
        int base = base(word);
        if (unsigned.isEmpty() || !hasUnderscoresBetweenDigits(unsigned, base)) {
            return OptionalDouble.empty();
        }
        String digits = unsigned.replace("_", "");
        if (base != 10) {
            return whole(digits.substring(2), base);
        }
        return isDecimal(digits) ? decimal(word.replace("_", "")) : OptionalDouble.empty();
    }

    /** A sign goes with decimal numbers only. */
    private static int base(String word) {
        return word.startsWith("0x") ? 16 : word.startsWith("0o") ? 8 : word.startsWith("0b") ? 2 : 10;
    }

    private static boolean hasUnderscoresBetweenDigits(String word, int base) {
        int first = base == 10 ? 0 : "0x".length();
        for (int i = word.indexOf('_'); i >= 0; i = word.indexOf('_', i + 1)) {
            boolean between = i > first
                    && i + 1 < word.length()
                    && Character.digit(word.charAt(i - 1), base) >= 0
                    && Character.digit(word.charAt(i + 1), base) >= 0;
            if (!between) {
                return false;
            }
        }
        return true;
    }

    private static OptionalDouble whole(String digits, int base) {
        // Java would take a sign here.
        if (digits.isEmpty() || Character.digit(digits.charAt(0), base) < 0) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of((double) Long.parseLong(digits, base));
        } catch (NumberFormatException noWholeNumber) {
            return OptionalDouble.empty();
        }
    }

    /** Digits, then perhaps a point and digits, then perhaps an exponent; no nought before other digits. */
    private static boolean isDecimal(String word) {
        int whole = digits(word, 0);
        if (whole == 0 || (whole > 1 && word.startsWith("0"))) {
            return false;
        }
        int end = whole;
        if (word.startsWith(".", end)) {
            int fraction = digits(word, end + 1);
            if (fraction == end + 1) {
                return false;
            }
            end = fraction;
        }
        if (word.startsWith("e", end) || word.startsWith("E", end)) {
            int start = word.startsWith("+", end + 1) || word.startsWith("-", end + 1) ? end + 2 : end + 1;
            end = digits(word, start);
            if (end == start) {
                return false;
            }
        }
        return end == word.length();
    }

    /** Where the digits from an index on end. */
    static int digits(String word, int from) {
        int end = from;
        while (end < word.length() && Cursor.isDigit(word.charAt(end))) {
            end++;
        }
        return end;
    }

    private static OptionalDouble decimal(String word) {
        try {
            boolean whole = word.indexOf('.') < 0 && word.indexOf('e') < 0 && word.indexOf('E') < 0;
            return OptionalDouble.of(whole ? (double) Long.parseLong(word) : Double.parseDouble(word));
        } catch (NumberFormatException tooLarge) {
            return OptionalDouble.empty();
        }
    }
}
