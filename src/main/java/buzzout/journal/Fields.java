package buzzout.journal;

import buzzout.probe.Printable;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** The fields of one line, each taken only if it is what it should be. */
record Fields(String owner, JsonObject object) {
    /** The largest number that a log holds: {@link JsonTree} takes no more digits for a whole number. */
    static final long MOST = 999_999_999_999_999L;

    private static final int MOST_QUOTED = 40;

    String text(String name) throws UnusableLine {
        return optionalText(name).orElseThrow(() -> missing(name, "a text"));
    }

    Optional<String> optionalText(String name) throws UnusableLine {
        JsonElement element = object.get(name);
        if (element == null) {
            return Optional.empty();
        }
        if (element instanceof JsonPrimitive value && value.isString()) {
            return Optional.of(value.getAsString());
        }
        throw new UnusableLine(quoted(name) + " of " + owner + " must be a text");
    }

    /** A list of texts; empty where it is left out. */
    List<String> texts(String name) throws UnusableLine {
        List<String> texts = new ArrayList<>();
        JsonElement element = object.get(name);
        if (element != null) {
            UnusableLine unusable = new UnusableLine(quoted(name) + " of " + owner + " must be a list of texts");
            if (!(element instanceof JsonArray list)) {
                throw unusable;
            }
            for (JsonElement each : list) {
                if (!(each instanceof JsonPrimitive value && value.isString())) {
                    throw unusable;
                }
                texts.add(value.getAsString());
            }
        }
        return texts;
    }

    long number(String name) throws UnusableLine {
        return optionalNumber(name).orElseThrow(() -> missing(name, "a whole number"));
    }

    OptionalLong optionalNumber(String name) throws UnusableLine {
        JsonElement element = object.get(name);
        if (element == null) {
            return OptionalLong.empty();
        }
        if (element instanceof JsonPrimitive value && value.isNumber() && value.getAsNumber() instanceof Long whole) {
            return OptionalLong.of(whole);
        }
        throw new UnusableLine(
                quoted(name) + " of " + owner + " must be a whole number, not negative, of at most 15 digits");
    }

    UnusableLine missing(String name, String what) {
        return new UnusableLine(owner + " needs " + quoted(name) + ", " + what);
    }

    static String quoted(String text) {
        String shown = text.length() <= MOST_QUOTED ? text : text.substring(0, MOST_QUOTED) + "...";
        return '"' + Printable.of(shown) + '"';
    }
}
