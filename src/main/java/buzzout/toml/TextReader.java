package buzzout.toml;

import java.util.ArrayList;
import java.util.List;

/** Reads a text in quotes, of any of the four kinds. */
final class TextReader {
    private final Cursor in;
    private final Spot at;
    private final StringBuilder text = new StringBuilder();
    private final List<Spot> spots = new ArrayList<>();

    private TextReader(Cursor in) {
        this.in = in;
        at = in.spot();
    }

    /** On one line; the cursor stands at the opening quote. */
    static Value.Text line(Cursor in) throws Stumble {
        return new TextReader(in).line();
    }

    /** On one line or, between three quotes, on several. */
    static Value.Text any(Cursor in) throws Stumble {
        TextReader reader = new TextReader(in);
        return in.sees("\"\"\"") || in.sees("'''") ? reader.lines() : reader.line();
    }

    private Value.Text line() throws Stumble {
        int quote = in.here();
        in.next();
        while (in.here() != quote) {
            if (in.isAtLineEnd()) {
                String closed = Character.toString(quote);
                throw in.unexpected(closed + " or a character", "close the text with " + closed + " on the same line");
            }
            character(quote == '"');
        }
        in.next();
        return read();
    }

    private Value.Text lines() throws Stumble {
        int quote = in.here();
        String closed = Character.toString(quote).repeat(3);
        in.next(closed.length());
        in.passLineEnd();
        try {
            passTo(closed);
        } catch (Stumble stumble) {
            // The rest of the text is no settings all the same.
            while (in.here() != Cursor.END && !in.passes(closed)) {
                in.next(quote == '"' && in.here() == '\\' ? 2 : 1);
            }
            throw stumble;
        }
        in.next(closed.length());
        // Up to two quotes may stand before the three that close.
        for (int more = 0; more < 2 && in.here() == quote; more++) {
            put(quote, in.spot());
            in.next();
        }
        return read();
    }

    private void passTo(String closed) throws Stumble {
        boolean escapes = closed.startsWith("\"");
        while (!in.sees(closed)) {
            if (in.here() == Cursor.END) {
                throw Stumble.over(
                        at, "a text that begins with " + closed + " and does not end", "close it with " + closed);
            }
            if (in.isAtLineEnd()) {
                put('\n', in.spot());
                in.passLineEnd();
            } else if (!escapes || !isPassedBreak()) {
                character(escapes);
            }
        }
    }

    private Value.Text read() {
        return new Value.Text(text.toString(), spots, at);
    }

    private void put(int point, Spot spot) {
        text.appendCodePoint(point);
        spots.add(spot);
    }

    private void character(boolean escapes) throws Stumble {
        Spot spot = in.spot();
        if (escapes && in.here() == '\\') {
            put(escaped(spot), spot);
        } else {
            in.checkCharacter();
            put(in.here(), spot);
            in.next();
        }
    }

    /** A backslash at a line's end, which takes the break and all white space after it away. */
    private boolean isPassedBreak() {
        if (in.here() != '\\' || !in.isBlankAfter()) {
            return false;
        }
        in.next();
        in.passBlanks();
        while (in.isAtLineEnd() && in.here() != Cursor.END) {
            in.passLineEnd();
            in.passBlanks();
        }
        return true;
    }

    private int escaped(Spot spot) throws Stumble {
        in.next();
        int letter = in.here();
        int digits = switch (letter) {
            case 'x' -> 2;
            case 'u' -> 4;
            case 'U' -> 8;
            default -> 0;
        };
        int point = digits > 0 ? in.hexadecimal(digits) : named(letter);
        if (!Character.isValidCodePoint(point) || Cursor.isHalf(point)) {
            throw Stumble.over(
                    spot,
                    "invalid escape sequence '\\" + (in.isAtLineEnd() ? "" : Character.toString(letter)) + "'",
                    "write \\\\ for a backslash, or put the text in single quotes");
        }
        in.next(1 + digits);
        return point;
    }

    /** What a letter behind a backslash stands for; -1 where for nothing. */
    private static int named(int letter) {
        return switch (letter) {
            case 'b' -> '\b';
            case 't' -> '\t';
            case 'n' -> '\n';
            case 'f' -> '\f';
            case 'r' -> '\r';
            case 'e' -> 0x1b;
            case '"', '\\' -> letter;
            default -> -1;
        };
    }
}
