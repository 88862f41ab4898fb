package buzzout.journal;

import com.google.gson.JsonElement;
import java.util.Locale;

/** JSON on one line that is safe to show on a terminal, which would obey control characters. */
public final class OneLineJson {
    private OneLineJson() {}

    /** Control and invisible characters are escaped; what it means stays the same. */
    public static String of(JsonElement element) {
        String json = element.toString();
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

    private static boolean isHarmless(String text, int at) {
        char each = text.charAt(at);
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
