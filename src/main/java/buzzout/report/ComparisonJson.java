package buzzout.report;

import buzzout.journal.OneLineJson;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.List;

/** A comparison as JSON: format {@code buzzout-comparison}, version 1, as COMPARISON-JSON.md describes it. */
public final class ComparisonJson {
    public static final String FORMAT = "buzzout-comparison";
    public static final int VERSION = 1;

    private ComparisonJson() {}

    /** One document on one line, without a line break. */
    public static String of(Comparison comparison) {
        JsonObject document = new JsonObject();
        document.addProperty("format", FORMAT);
        document.addProperty("version", VERSION);
        document.addProperty("board", comparison.after().outcome().plan().name());
        document.add("unit", JsonValues.orNull(comparison.after().outcome().unit()));
        document.add("before", BatchJson.session(comparison.before()));
        document.add("after", BatchJson.session(comparison.after()));
        document.add("fixed", findings(comparison.fixed()));
        document.add("left", findings(comparison.left()));
        document.add("broken", findings(comparison.broken()));
        document.add("open", findings(comparison.unproven()));
        JsonArray keys = new JsonArray();
        comparison.keys().forEach(change -> keys.add(key(change)));
        document.add("keys", keys);
        document.add("remarks", JsonValues.texts(comparison.remarks()));
        return OneLineJson.of(document);
    }

    private static JsonArray findings(List<Comparison.Named> findings) {
        JsonArray array = new JsonArray();
        for (Comparison.Named finding : findings) {
            JsonObject object = new JsonObject();
            object.addProperty("code", finding.code());
            object.addProperty("says", finding.says());
            object.addProperty("settled", finding.settled());
            array.add(object);
        }
        return array;
    }

    private static JsonObject key(Comparison.KeyChange change) {
        JsonObject object = new JsonObject();
        object.addProperty("key", change.key());
        object.addProperty("before", change.before().word());
        object.addProperty("after", change.after().word());
        return object;
    }
}
