package buzzout.journal;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.HexFormat;
import java.util.Map;

/** JSON (RFC 8259) on one line that is safe to show on a terminal, which would obey control characters. */
public final class OneLineJson {
    private final StringBuilder line = new StringBuilder();

    private OneLineJson() {}

    /** Control and invisible characters are escaped; what it means stays the same. */
    public static String of(JsonElement element) {
        OneLineJson json = new OneLineJson();
        json.put(element);
        return json.line.toString();
    }

    private void put(JsonElement element) {
        if (element instanceof JsonObject object) {
            put(object);
        } else if (element instanceof JsonArray array) {
            put(array);
        } else if (element instanceof JsonPrimitive value && value.isString()) {
            put(value.getAsString());
        } else {
            line.append(element.isJsonNull() ? "null" : element.getAsString());
        }
    }

    private void put(JsonObject object) {
        char before = '{';
        for (Map.Entry<String, JsonElement> entry : object.entrySet()) {
            line.append(before);
            put(entry.getKey());
            line.append(':');
            put(entry.getValue());
            before = ',';
        }
        line.append(before == '{' ? "{}" : "}");
    }

    private void put(JsonArray array) {
        char before = '[';
        for (JsonElement each : array) {
            line.append(before);
            put(each);
            before = ',';
        }
        line.append(before == '[' ? "[]" : "]");
    }

    private void put(String text) {
        line.append('"');
        int written = 0;
        for (int at = 0; at < text.length(); at++) {
            if (!staysAsItIs(text, at)) {
                line.append(text, written, at).append(escaped(text.charAt(at)));
                written = at + 1;
            }
        }
        line.append(text, written, text.length()).append('"');
    }

    private static String escaped(char each) {
        return switch (each) {
            case '"' -> "\\\"";
            case '\\' -> "\\\\";
            case '\n' -> "\\n";
            case '\r' -> "\\r";
            case '\t' -> "\\t";
            case '\b' -> "\\b";
            case '\f' -> "\\f";
            default -> "\\u" + HexFormat.of().toHexDigits(each);
        };
    }

    private static boolean staysAsItIs(String text, int at) {
        char each = text.charAt(at);
        if (each >= ' ' && each <= '~') {
            return each != '"' && each != '\\';
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
