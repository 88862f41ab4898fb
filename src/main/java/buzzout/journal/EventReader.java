package buzzout.journal;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Joint;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.probe.Identity;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** A line of a log as an event; the reverse of {@link EventWriter}, for lines that people wrote too. */
final class EventReader {
    /** What passes between two lines of which the second does not say when it was. */
    private static final long UNSTATED_MILLIS = 100;

    private final Plan plan;
    private final Map<String, Integer> pins = new HashMap<>();
    /** One object for each pair: a long log names few of them often. */
    private final Pair[][] pairs;

    private long lastMillis = -UNSTATED_MILLIS;

    EventReader(Plan plan) {
        this.plan = plan;
        for (String pin : plan.pins()) {
            pins.put(pin, pins.size());
        }
        pairs = new Pair[pins.size()][pins.size()];
        for (int low = 0; low < pairs.length; low++) {
            for (int reads = 0; reads < pairs.length; reads++) {
                pairs[low][reads] = new Pair(low, reads);
            }
        }
    }

    Event event(JsonObject object) throws UnusableLine {
        String word = new Fields("an event", object).text("event");
        Fields fields = new Fields(Fields.quoted(word), object);
        long millis = fields.optionalNumber("ms").orElse(Math.min(lastMillis + UNSTATED_MILLIS, Fields.MOST));
        Event event = switch (word) {
            case "found", "whole", "closed", "opened", "lost", "garbled", "link-lost", "refused" ->
                new Event.FromProbe(millis, probeEvent(word, fields, millis));
            default -> new Event.ByPerson(millis, action(word, fields));
        };
        lastMillis = millis;
        return event;
    }

    private ProbeEvent probeEvent(String word, Fields fields, long millis) throws UnusableLine {
        return switch (word) {
            case "found" ->
                new ProbeEvent.Found(
                        identity(fields), fields.optionalText("port").orElse("unknown"));
            case "whole" -> new ProbeEvent.WholeState(micros(fields, millis), pairs(fields));
            case "closed" -> new ProbeEvent.Closed(micros(fields, millis), pair(fields));
            case "opened" -> new ProbeEvent.Opened(micros(fields, millis), pair(fields));
            case "lost" -> new ProbeEvent.Lost(fields.number("changes"));
            case "garbled" ->
                new ProbeEvent.Garbled(
                        fields.number("lines"), fields.optionalText("sample").orElse(""));
            case "link-lost" -> new ProbeEvent.LinkLost(fields.text("why"));
            default -> new ProbeEvent.Refused(fields.text("why"));
        };
    }

    private static long micros(Fields fields, long millis) throws UnusableLine {
        return fields.optionalNumber("us").orElse(Math.min(millis * 1000, Fields.MOST));
    }

    private static Identity identity(Fields fields) throws UnusableLine {
        return new Identity(
                small(fields.optionalNumber("protocol").orElse(0)),
                fields.optionalText("sketch").orElse("unknown"),
                fields.optionalText("chip").orElse("unknown"),
                small(fields.optionalNumber("mostPins").orElse(0)),
                fields.optionalNumber("clockHertz").orElse(0));
    }

    private static int small(long number) {
        return (int) Math.min(number, Integer.MAX_VALUE);
    }

    private Pair pair(Fields fields) throws UnusableLine {
        return pair(fields, fields.text("low"), fields.text("reads"));
    }

    private Pair pair(Fields fields, String low, String reads) throws UnusableLine {
        if (low.equals(reads)) {
            throw new UnusableLine(fields.owner() + " pairs the pin " + Fields.quoted(low) + " with itself");
        }
        return pairs[pin(low)][pin(reads)];
    }

    private Pairs pairs(Fields fields) throws UnusableLine {
        JsonElement byDrivenPin = fields.object().get("pairs");
        if (!(byDrivenPin instanceof JsonObject drivenPins)) {
            throw fields.missing("pairs", "an object from a driven pin to the list of the pins that read low");
        }
        List<Pair> pairs = new ArrayList<>();
        for (Map.Entry<String, JsonElement> driven : drivenPins.entrySet()) {
            if (!(driven.getValue() instanceof JsonArray reading)) {
                throw new UnusableLine("\"pairs\" must hold a list of pins for " + Fields.quoted(driven.getKey()));
            }
            for (JsonElement pin : reading) {
                if (!(pin instanceof JsonPrimitive name && name.isString())) {
                    throw new UnusableLine("\"pairs\" must name pins as texts");
                }
                pairs.add(pair(fields, driven.getKey(), name.getAsString()));
            }
        }
        return Pairs.of(pairs);
    }

    private Action action(String word, Fields fields) throws UnusableLine {
        return switch (word) {
            case "quiet-check-done" -> new Action.QuietCheckDone();
            case "roll-call-begun" -> new Action.RollCallBegun();
            case "roll-call-left" -> new Action.RollCallLeft();
            case "called" -> new Action.Called(key(fields));
            case "nothing-came" -> new Action.NothingCame(key(fields));
            case "touch-called" -> new Action.TouchCalled(joint(fields));
            case "touched-nothing" -> new Action.TouchedNothing(joint(fields));
            case "all-pressed" -> new Action.AllPressed();
            case "read-through-begun" -> new Action.ReadThroughBegun();
            case "read-through-ended" -> new Action.ReadThroughEnded();
            case "taken-back" -> new Action.TakenBack();
            case "repaired" -> repaired(fields);
            case "flex-begun" -> new Action.FlexBegun();
            case "flex-over" -> new Action.FlexOver();
            case "called-together" -> new Action.CalledTogether(combinations(fields));
            case "noted" -> new Action.Noted(fields.text("text"));
            case "ended" -> new Action.Ended();
            default ->
                throw new UnusableLine(
                        "this version knows no event " + fields.owner() + "; a newer one may have" + " written it");
        };
    }

    private Action repaired(Fields fields) throws UnusableLine {
        String code = fault(fields.text("fault"));
        List<String> alike = new ArrayList<>();
        for (String other : fields.texts("or")) {
            alike.add(fault(other));
        }
        return new Action.Repaired(code, alike);
    }

    private int pin(String name) throws UnusableLine {
        Integer index = pins.get(name);
        if (index == null) {
            throw new UnusableLine("the plan has no pin " + Fields.quoted(name));
        }
        return index;
    }

    private List<Set<Integer>> combinations(Fields fields) throws UnusableLine {
        if (!(fields.object().get("combinations") instanceof JsonArray all)) {
            throw fields.missing("combinations", "a list of lists of keys");
        }
        List<Set<Integer>> combinations = new ArrayList<>();
        for (JsonElement each : all) {
            if (!(each instanceof JsonArray names) || names.isEmpty()) {
                throw new UnusableLine("\"combinations\" must hold lists of keys, none of them empty");
            }
            Set<Integer> keys = new HashSet<>();
            for (JsonElement name : names) {
                if (!(name instanceof JsonPrimitive text && text.isString())) {
                    throw new UnusableLine("\"combinations\" must name keys as texts");
                }
                keys.add(key(text.getAsString()));
            }
            combinations.add(keys);
        }
        return combinations;
    }

    private int key(Fields fields) throws UnusableLine {
        return key(fields.text("key"));
    }

    private int key(String name) throws UnusableLine {
        return plan.key(name)
                .orElseThrow(() -> new UnusableLine("the plan has no key " + Fields.quoted(name)))
                .index();
    }

    private Joint joint(Fields fields) throws UnusableLine {
        if (plan.sparePin().isEmpty()) {
            throw new UnusableLine(fields.owner() + " needs a plan with a spare pin");
        }
        int key = key(fields);
        String keyName = fields.text("key");
        String name = fields.text("net");
        return Stream.of(NetKind.values())
                .map(kind -> new Joint(key, kind))
                .filter(joint -> plan.nets().get(joint.net(plan)).name().equals(name))
                .findFirst()
                .orElseThrow(() -> new UnusableLine(
                        "the key " + Fields.quoted(keyName) + " is not on a net " + Fields.quoted(name)));
    }

    private String fault(String code) throws UnusableLine {
        return Catalogue.find(plan, code)
                .map(fault -> fault.code(plan))
                .orElseThrow(() -> new UnusableLine("the plan's board has no fault " + Fields.quoted(code)));
    }
}
