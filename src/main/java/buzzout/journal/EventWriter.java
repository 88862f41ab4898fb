package buzzout.journal;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Joint;
import buzzout.plan.Plan;
import buzzout.probe.Identity;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Set;

/** An event as one line of a log; pins and keys by name, so that a line says the same beside any plan. */
final class EventWriter {
    private final Plan plan;
    private final List<String> pins;

    EventWriter(Plan plan) {
        this.plan = plan;
        pins = plan.pins();
    }

    /** The line without its line break. */
    String line(Event event) {
        JsonObject line = new JsonObject();
        line.addProperty("ms", event.atMillis());
        if (event instanceof Event.FromProbe from) {
            put(line, from.event());
        } else if (event instanceof Event.ByPerson by) {
            put(line, by.action());
        }
        return OneLineJson.of(line);
    }

    private void put(JsonObject line, ProbeEvent event) {
        if (event instanceof ProbeEvent.Found found) {
            line.addProperty("event", "found");
            line.addProperty("port", found.port());
            put(line, found.identity());
        } else if (event instanceof ProbeEvent.WholeState whole) {
            line.addProperty("event", "whole");
            line.addProperty("us", whole.micros());
            line.add("pairs", pairs(whole.pairs()));
        } else if (event instanceof ProbeEvent.Closed closed) {
            put(line, "closed", closed.micros(), closed.pair());
        } else if (event instanceof ProbeEvent.Opened opened) {
            put(line, "opened", opened.micros(), opened.pair());
        } else if (event instanceof ProbeEvent.Lost lost) {
            line.addProperty("event", "lost");
            line.addProperty("changes", lost.changes());
        } else if (event instanceof ProbeEvent.Garbled garbled) {
            line.addProperty("event", "garbled");
            line.addProperty("lines", garbled.lines());
            line.addProperty("sample", garbled.sample());
        } else if (event instanceof ProbeEvent.LinkLost lost) {
            line.addProperty("event", "link-lost");
            line.addProperty("why", lost.why());
        } else if (event instanceof ProbeEvent.Refused refused) {
            line.addProperty("event", "refused");
            line.addProperty("why", refused.why());
        }
    }

    private static void put(JsonObject line, Identity identity) {
        line.addProperty("protocol", identity.protocol());
        line.addProperty("sketch", identity.sketch());
        line.addProperty("chip", identity.chip());
        line.addProperty("mostPins", identity.mostPins());
        line.addProperty("clockHertz", identity.clockHertz());
    }

    private void put(JsonObject line, String word, long micros, Pair pair) {
        line.addProperty("event", word);
        line.addProperty("us", micros);
        line.addProperty("low", pin(pair.low()));
        line.addProperty("reads", pin(pair.reads()));
    }

    private JsonObject pairs(Pairs pairs) {
        JsonObject byDrivenPin = new JsonObject();
        for (Pair pair : pairs.list()) {
            String low = pin(pair.low());
            if (!byDrivenPin.has(low)) {
                byDrivenPin.add(low, new JsonArray());
            }
            byDrivenPin.getAsJsonArray(low).add(pin(pair.reads()));
        }
        return byDrivenPin;
    }

    private void put(JsonObject line, Action action) {
        if (action instanceof Action.QuietCheckDone) {
            line.addProperty("event", "quiet-check-done");
        } else if (action instanceof Action.RollCallBegun) {
            line.addProperty("event", "roll-call-begun");
        } else if (action instanceof Action.RollCallLeft) {
            line.addProperty("event", "roll-call-left");
        } else if (action instanceof Action.Called called) {
            line.addProperty("event", "called");
            line.addProperty("key", key(called.key()));
        } else if (action instanceof Action.NothingCame nothing) {
            line.addProperty("event", "nothing-came");
            line.addProperty("key", key(nothing.key()));
        } else if (action instanceof Action.TouchCalled touch) {
            put(line, "touch-called", touch.joint());
        } else if (action instanceof Action.TouchedNothing nothing) {
            put(line, "touched-nothing", nothing.joint());
        } else if (action instanceof Action.AllPressed) {
            line.addProperty("event", "all-pressed");
        } else if (action instanceof Action.ReadThroughBegun) {
            line.addProperty("event", "read-through-begun");
        } else if (action instanceof Action.ReadThroughEnded) {
            line.addProperty("event", "read-through-ended");
        } else if (action instanceof Action.TakenBack) {
            line.addProperty("event", "taken-back");
        } else if (action instanceof Action.Repaired repaired) {
            line.addProperty("event", "repaired");
            line.addProperty("fault", repaired.code());
            if (!repaired.orAlike().isEmpty()) {
                JsonArray alike = new JsonArray();
                repaired.orAlike().forEach(alike::add);
                line.add("or", alike);
            }
        } else if (action instanceof Action.FlexBegun) {
            line.addProperty("event", "flex-begun");
        } else if (action instanceof Action.FlexOver) {
            line.addProperty("event", "flex-over");
        } else if (action instanceof Action.CalledTogether called) {
            line.addProperty("event", "called-together");
            line.add("combinations", combinations(called.combinations()));
        } else if (action instanceof Action.Noted noted) {
            line.addProperty("event", "noted");
            line.addProperty("text", noted.text());
        } else if (action instanceof Action.Ended) {
            line.addProperty("event", "ended");
        }
    }

    private JsonArray combinations(List<Set<Integer>> combinations) {
        JsonArray all = new JsonArray();
        for (Set<Integer> combination : combinations) {
            JsonArray keys = new JsonArray();
            combination.stream().sorted().map(this::key).forEach(keys::add);
            all.add(keys);
        }
        return all;
    }

    private void put(JsonObject line, String word, Joint joint) {
        line.addProperty("event", word);
        line.addProperty("net", plan.nets().get(joint.net(plan)).name());
        line.addProperty("key", key(joint.key()));
    }

    private String pin(int index) {
        return pins.get(index);
    }

    private String key(int index) {
        return plan.keys().get(index).name();
    }
}
