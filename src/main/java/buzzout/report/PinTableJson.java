package buzzout.report;

import buzzout.plan.Plan;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.List;
import java.util.Locale;

/** A pin table as JSON: format {@code buzzout-pins}, version 1, as PIN-TABLE.md describes it. */
public final class PinTableJson {
    static final String FORMAT = "buzzout-pins";
    static final int VERSION = 1;

    private static final Gson INDENTED = new GsonBuilder()
            .setPrettyPrinting()
            .disableHtmlEscaping()
            .serializeNulls()
            .create();

    private PinTableJson() {}

    /** One document over several lines, the last one ended. */
    public static String of(PinTable table) {
        Plan plan = table.plan();
        JsonObject document = new JsonObject();
        document.addProperty("format", FORMAT);
        document.addProperty("version", VERSION);
        document.addProperty("board", plan.name());
        document.addProperty("controller", plan.controller().name());
        document.addProperty("stripe", plan.stripe().word());
        document.add("rows", leads(table.rows()));
        document.add("columns", leads(table.columns()));
        JsonArray keys = new JsonArray();
        table.keys().forEach(seat -> keys.add(key(seat)));
        document.add("keys", keys);
        document.add("proof", table.proof().map(PinTableJson::proof).orElse(JsonNull.INSTANCE));
        return INDENTED.toJson(document) + "\n";
    }

    private static JsonArray leads(List<PinTable.Lead> leads) {
        JsonArray array = new JsonArray();
        for (PinTable.Lead lead : leads) {
            JsonObject object = new JsonObject();
            object.addProperty("net", lead.net().name());
            object.addProperty("pin", lead.net().pin());
            object.add("colour", JsonValues.orNull(lead.net().colour()));
            object.addProperty("proven", lead.proven());
            array.add(object);
        }
        return array;
    }

    private static JsonObject key(PinTable.Seat seat) {
        JsonObject object = new JsonObject();
        object.addProperty("key", seat.key().name());
        object.addProperty("row", seat.row());
        object.addProperty("column", seat.column());
        object.add(
                "usage",
                seat.usage().isPresent()
                        ? new JsonPrimitive(
                                String.format(Locale.ROOT, "%02X", seat.usage().getAsInt()))
                        : JsonNull.INSTANCE);
        object.add("place", JsonValues.orNull(seat.place()));
        object.addProperty("x", seat.key().place().x());
        object.addProperty("y", seat.key().place().y());
        object.addProperty("width", seat.key().place().width());
        object.addProperty("state", seat.state().word());
        return object;
    }

    private static JsonElement proof(PinTable.Proof proof) {
        JsonObject object = new JsonObject();
        object.addProperty("log", proof.log());
        object.add("unit", JsonValues.orNull(proof.outcome().unit()));
        object.add("started", JsonValues.time(proof.outcome().started()));
        object.addProperty("verdict", proof.outcome().verdict().word());
        return object;
    }
}
