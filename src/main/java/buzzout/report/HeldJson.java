package buzzout.report;

import buzzout.plan.Plan;
import buzzout.session.AllAtOnce;
import buzzout.session.FlexCheck;
import buzzout.session.Session;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.Set;

/** What holding keys showed, in the JSON of a diagnosis. */
final class HeldJson {
    private HeldJson() {}

    static JsonArray flexed(Plan plan, FlexCheck flex) {
        JsonArray array = new JsonArray();
        for (FlexCheck.Pattern pattern : flex.patterns()) {
            JsonObject object = new JsonObject();
            object.add("dropped", keys(plan, pattern.dropped()));
            object.add("stayed", keys(plan, pattern.stayed()));
            object.addProperty("times", pattern.times());
            object.addProperty("longestMicros", pattern.longestMicros());
            array.add(object);
        }
        return array;
    }

    static JsonArray together(Session session) {
        JsonArray array = new JsonArray();
        for (AllAtOnce.Tried tried : session.allAtOnce().tried()) {
            JsonObject object = new JsonObject();
            object.add("held", keys(session.plan(), tried.keys()));
            object.addProperty("asComputed", HeldText.isAsComputed(session, tried));
            array.add(object);
        }
        return array;
    }

    private static JsonArray keys(Plan plan, Set<Integer> keys) {
        JsonArray names = new JsonArray();
        keys.stream().sorted().forEach(key -> names.add(plan.keys().get(key).name()));
        return names;
    }
}
