package buzzout.toml;

import java.util.OptionalDouble;

/** Reads a value that is neither in quotes nor in brackets. */
final class PlainValue {
    private static final int DAY = "0000-00-00".length();

    private PlainValue() {}

    /** The value at the cursor. */
    static Value read(Cursor in) throws Stumble {
        Spot at = in.spot();
        String word = in.ahead(PlainValue::isPlain);
        OptionalDouble number = Numeral.value(word);
        boolean truth = word.equals("true") || word.equals("false");
        if (number.isEmpty() && startsAsNumber(word) && !startsAsMoment(word)) {
            throw Stumble.over(
                    at,
                    "there is no number '" + Stumble.cut(word) + "'",
                    "write it without noughts before it and with digits on both sides of a point, or put text in quotes");
        }
        if (!truth && number.isEmpty() && !startsAsMoment(word)) {
            throw in.unexpected(word, "a value", "put one there, text in quotes, such as \"D0\"");
        }
        in.next(word.length());
        if (truth) {
            return new Value.Truth(word.equals("true"), at);
        }
        return number.isPresent() ? new Value.Quantity(number.getAsDouble(), at) : moment(in, at, word);
    }

    private static Value moment(Cursor in, Spot at, String start) throws Stumble {
        String word = start;
        // A blank may part the day from the time.
        if (word.length() == DAY && in.here() == ' ' && in.isDigitAfter()) {
            in.next();
            String time = in.ahead(PlainValue::isPlain);
            in.next(time.length());
            word += " " + time;
        }
        if (!Moments.isOne(word)) {
            throw Stumble.over(at, "there is no date or time '" + Stumble.cut(word) + "'", "mend it");
        }
        return new Value.Moment(word, at);
    }

    private static boolean isPlain(int point) {
        return Cursor.isBare(point) || point == '+' || point == '.' || point == ':';
    }

    private static boolean startsAsNumber(String word) {
        int sign = word.startsWith("+") || word.startsWith("-") || word.startsWith(".") ? 1 : 0;
        return word.length() > sign && Cursor.isDigit(word.charAt(sign));
    }

    private static boolean startsAsMoment(String word) {
        int digits = Numeral.digits(word, 0);
        return (digits == 4 && word.startsWith("-", digits)) || (digits == 2 && word.startsWith(":", digits));
    }
}
