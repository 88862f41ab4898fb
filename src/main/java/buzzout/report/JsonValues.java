package buzzout.report;

import buzzout.journal.WrittenTime;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonPrimitive;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/** Values that several JSON documents hold. */
final class JsonValues {
    private JsonValues() {}

    static JsonArray texts(List<String> texts) {
        JsonArray array = new JsonArray();
        texts.forEach(array::add);
        return array;
    }

    static JsonElement orNull(Optional<String> text) {
        return text.<JsonElement>map(JsonPrimitive::new).orElse(JsonNull.INSTANCE);
    }

    static JsonElement time(Optional<OffsetDateTime> at) {
        return orNull(at.map(WrittenTime::of));
    }
}
