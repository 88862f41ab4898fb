package buzzout.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseOptions;
import org.tomlj.TomlParseResult;

/** Parses a file as TOML, and says in plain words where it is not. */
final class TomlText {
    /** A plan's deepest is a list in a net in a table. */
    private static final int MOST_NESTED = 8;

    /** One slip can spoil every line after it, and a file that is no text at all spoils them all. */
    private static final int MOST_ERRORS = 20;

    private static final Pattern TWICE = Pattern.compile("(.*) previously defined at line (\\d+), column \\d+");

    /** What the parser's words call for, the first that fits. */
    private record Advice(String words, String todo) {}

    private static final List<Advice> ADVICE = List.of(
            new Advice("expected a value", "put one there, with quotes round text, such as pin = \"D0\""),
            new Advice("expected \" or a character", "close the text with \" on the same line"),
            new Advice("expected ' or a character", "close the text with ' on the same line"),
            new Advice("escape", "write \\\\ for a backslash, or put the text in single quotes"),
            new Advice("expected }", "put commas between the settings and close the brace"),
            new Advice("expected ]", "close the bracket"),
            new Advice("expected . or =", "write a setting as name = value"),
            new Advice("expected =", "write a setting as name = value"),
            new Advice("expected a newline", "begin a new line"),
            new Advice("expected a key", "begin the line with a setting's name, a [table] or a # comment"),
            new Advice("too deep", "a plan nests no deeper than a list in a net"));

    private TomlText() {}

    /** The file's settings; empty when what was read of it would only mislead. */
    static Optional<Settings> parse(String text, Problems problems) {
        if (!Bounds.hold(text, problems)) {
            return Optional.empty();
        }
        // Some editors begin a file with a byte order mark.
        String toml = text.startsWith("\ufeff") ? text.substring(1) : text;
        TomlParseResult result;
        try {
            result = parsed(toml);
        } catch (RuntimeException stumbled) {
            problems.unread(
                    stumblingBlock(toml),
                    "not TOML: a comment within { } has a character that does not print; take the comment out");
            return Optional.empty();
        }
        List<TomlParseError> errors = result.errors();
        errors.stream()
                .limit(MOST_ERRORS)
                .forEach(error -> problems.unread(Spot.of(error.position()), inPlainWords(error)));
        if (errors.size() > MOST_ERRORS) {
            problems.error(
                    Spot.of(errors.get(MOST_ERRORS).position()),
                    (errors.size() - MOST_ERRORS) + " more places are not TOML; mend the ones named and check again");
        }
        Source source = new Source(toml);
        // What follows the second header of a table has no place of its own.
        boolean headerTwice = errors.stream().anyMatch(error -> source.at(Spot.of(error.position())) == '[');
        return headerTwice ? Optional.empty() : Optional.of(new Settings(result, Spot.START, "", source, problems));
    }

    private static TomlParseResult parsed(String toml) {
        return Toml.parse(toml, TomlParseOptions.defaults().withMaxNestingDepth(MOST_NESTED));
    }

    /** The line of a stray character that tomlj 2.2.0 falls over, which tells no place: the last of the fewest lines so. */
    private static Spot stumblingBlock(String toml) {
        String[] lines = toml.split("\n", -1);
        int good = 0;
        int bad = lines.length;
        while (bad - good > 1) {
            int middle = (good + bad) / 2;
            try {
                parsed(String.join("\n", Arrays.asList(lines).subList(0, middle)));
                good = middle;
            } catch (RuntimeException stumbled) {
                bad = middle;
            }
        }
        return new Spot(bad, 1);
    }

    private static String inPlainWords(TomlParseError error) {
        String message = String.valueOf(error.getMessage());
        Matcher twice = TWICE.matcher(message);
        if (twice.matches()) {
            return Visible.quoted(twice.group(1)) + " is set twice, first on line " + twice.group(2) + "; keep one";
        }
        String said = message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1);
        return "not TOML: " + Visible.of(said) + "; "
                + ADVICE.stream()
                        .filter(advice -> message.contains(advice.words()))
                        .findFirst()
                        .map(Advice::todo)
                        .orElse("mend it");
    }
}
