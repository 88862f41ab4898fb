package buzzout.journal;

import com.google.gson.JsonElement;
import com.google.gson.Strictness;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;

/** JSON on one line that is safe to show on a terminal, which would obey control characters. */
public final class OneLineJson {
    private OneLineJson() {}

    /** Control and invisible characters are escaped; what it means stays the same. */
    public static String of(JsonElement element) {
        String json = json(element);
        if (isHarmless(json)) {
            return json;
        }
        StringBuilder safe = new StringBuilder(json.length());
        for (int at = 0; at < json.length(); at++) {
            if (isHarmless(json, at)) {
                safe.append(json.charAt(at));
            } else {
                safe.append(String.format(Locale.ROOT, "\\u%04x", (int) json.charAt(at)));
            }
        }
        return safe.toString();
    }

    private static boolean isHarmless(String json) {
        for (int at = 0; at < json.length(); at++) {
            if (!isHarmless(json, at)) {
                return false;
            }
        }
        return true;
    }

    private static String json(JsonElement element) {
        StringWriter written = new StringWriter();
        try (JsonWriter out = new JsonWriter(written)) {
            out.setStrictness(Strictness.LENIENT);
            JsonTree.write(element, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return written.toString();
    }

    private static boolean isHarmless(String text, int at) {
        char each = text.charAt(at);
        if (each >= ' ' && each <= '~') {
            return true;
        }
        return switch (Character.getType(each)) {
            case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
            case Character.SURROGATE ->
                Character.isHighSurrogate(each)
                        ? at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1))
                        : at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
            default -> true;
        };
    }
}
