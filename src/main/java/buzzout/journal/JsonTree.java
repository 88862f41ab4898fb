package buzzout.journal;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.MalformedJsonException;
import java.io.IOException;

/** JSON values read by themselves: gson's own way leads over all that it knows of Java's types. */
final class JsonTree {
    /** Enough for microseconds over thirty years; longer whole numbers are not exact in any JSON reader. */
    private static final int MOST_EXACT_DIGITS = 15;

    private JsonTree() {}

    /**
     * The next value: a whole number, not negative, that is short enough to be exact becomes a {@link Long}, any other the
     * nearest double.
     */
    static JsonElement read(JsonReader in) throws IOException {
        return switch (in.peek()) {
            case BEGIN_OBJECT -> object(in);
            case BEGIN_ARRAY -> array(in);
            case STRING -> new JsonPrimitive(in.nextString());
            case NUMBER -> number(in.nextString());
            case BOOLEAN -> new JsonPrimitive(in.nextBoolean());
            case NULL -> {
                in.nextNull();
                yield JsonNull.INSTANCE;
            }
            default -> throw new MalformedJsonException("no value where one should be");
        };
    }

    private static JsonObject object(JsonReader in) throws IOException {
        JsonObject object = new JsonObject();
        in.beginObject();
        while (in.hasNext()) {
            object.add(in.nextName(), read(in));
        }
        in.endObject();
        return object;
    }

    private static JsonArray array(JsonReader in) throws IOException {
        JsonArray array = new JsonArray();
        in.beginArray();
        while (in.hasNext()) {
            array.add(read(in));
        }
        in.endArray();
        return array;
    }

    private static JsonPrimitive number(String written) {
        return isShortAndWhole(written)
                ? new JsonPrimitive(Long.parseLong(written))
                : new JsonPrimitive(Double.parseDouble(written));
    }

    private static boolean isShortAndWhole(String written) {
        for (int i = 0; i < written.length(); i++) {
            if (written.charAt(i) < '0' || written.charAt(i) > '9') {
                return false;
            }
        }
        return written.length() <= MOST_EXACT_DIGITS;
    }
}
