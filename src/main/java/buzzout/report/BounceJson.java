package buzzout.report;

import buzzout.plan.Plan;
import buzzout.session.Bounces;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** Bounce times in the JSON of a diagnosis. */
final class BounceJson {
    private BounceJson() {}

    static JsonObject of(Plan plan, Bounces bounces) {
        JsonObject object = new JsonObject();
        object.addProperty("limitMicros", bounces.limitMicros());
        JsonObject keys = new JsonObject();
        bounces.keys().stream()
                .sorted(java.util.Comparator.comparingInt(Bounces.OfKey::key))
                .forEach(key -> keys.add(plan.keys().get(key.key()).name(), key(key)));
        object.add("contacts", keys);
        JsonArray histogram = new JsonArray();
        bounces.histogram().forEach(bar -> histogram.add(bar(bar)));
        object.add("histogram", histogram);
        return object;
    }

    private static JsonObject key(Bounces.OfKey key) {
        JsonObject object = new JsonObject();
        object.addProperty("presses", key.presses());
        object.addProperty("over", key.over());
        object.addProperty("longestPressingMicros", key.longestPressing());
        object.addProperty("longestLettingGoMicros", key.longestLettingGo());
        return object;
    }

    private static JsonObject bar(Bounces.Bar bar) {
        JsonObject object = new JsonObject();
        object.addProperty("fromMicros", bar.fromMicros());
        if (bar.toMicros() < Long.MAX_VALUE) {
            object.addProperty("toMicros", bar.toMicros());
        }
        object.addProperty("presses", bar.presses());
        return object;
    }
}
