package buzzout.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Held against gson, which writes and reads JSON by itself. */
class OneLineJsonTest {
    private static final long SEED = 20261126;
    private static final Gson GSON =
            new GsonBuilder().disableHtmlEscaping().serializeNulls().create();

    private final Random random = new Random(SEED);

    @Test
    void what_it_writes_is_read_as_what_it_was_and_holds_nothing_that_moves_a_cursor() {
        for (int round = 0; round < 5_000; round++) {
            JsonElement value = value(3, 0x300);
            String line = OneLineJson.of(value);
            assertEquals(value, JsonParser.parseString(line), "seed " + SEED + ": " + line);
            assertTrue(
                    line.chars().noneMatch(each -> Character.isISOControl(each) || isInvisible(each)),
                    () -> "seed " + SEED + ": " + line);
        }
    }

    private static boolean isInvisible(int each) {
        return Character.getType(each) == Character.FORMAT
                || Character.getType(each) == Character.LINE_SEPARATOR
                || Character.getType(each) == Character.PARAGRAPH_SEPARATOR;
    }

    @Test
    void where_nothing_is_invisible_it_writes_as_others_do() {
        for (int round = 0; round < 5_000; round++) {
            JsonElement value = value(3, 0x7f);
            assertEquals(GSON.toJson(value), OneLineJson.of(value), "seed " + SEED);
        }
    }

    @Test
    void invisible_characters_are_escaped_and_whole_pairs_of_surrogates_are_not() {
        assertEquals(
                "\"a\\u202eb\\u009bc\\u2028\\ud800 \uD83D\uDD27\"",
                OneLineJson.of(new JsonPrimitive("a\u202eb\u009bc\u2028\ud800 \uD83D\uDD27")));
    }

    private JsonElement value(int depth, int mostCharacter) {
        return switch (random.nextInt(depth > 0 ? 6 : 4)) {
            case 0 -> new JsonPrimitive(text(mostCharacter));
            case 1 ->
                random.nextBoolean() ? new JsonPrimitive(random.nextLong()) : new JsonPrimitive(random.nextDouble());
            case 2 -> new JsonPrimitive(random.nextBoolean());
            case 3 -> JsonNull.INSTANCE;
            case 4 -> {
                JsonArray array = new JsonArray();
                for (int count = random.nextInt(4); count > 0; count--) {
                    array.add(value(depth - 1, mostCharacter));
                }
                yield array;
            }
            default -> {
                JsonObject object = new JsonObject();
                for (int count = random.nextInt(4); count > 0; count--) {
                    object.add(text(mostCharacter), value(depth - 1, mostCharacter));
                }
                yield object;
            }
        };
    }

    private String text(int mostCharacter) {
        StringBuilder text = new StringBuilder();
        for (int count = random.nextInt(9); count > 0; count--) {
            text.append((char) random.nextInt(mostCharacter));
        }
        return text.toString();
    }
}
