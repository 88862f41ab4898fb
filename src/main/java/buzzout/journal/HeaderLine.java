package buzzout.journal;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalLong;

/** The first line of a log. */
final class HeaderLine {
    static final String FORMAT = "buzzout-session";
    static final int VERSION = 2;

    /** The events of version 1 mean the same in version 2, so its logs are read as they are. */
    private static final int OLDEST = 1;

    private HeaderLine() {}

    static String write(LogHeader header) {
        JsonObject line = new JsonObject();
        line.addProperty("format", FORMAT);
        line.addProperty("version", VERSION);
        header.program().ifPresent(program -> line.addProperty("program", program));
        header.started().ifPresent(started -> line.addProperty("started", WrittenTime.of(started)));
        header.unit().ifPresent(unit -> line.addProperty("unit", unit));
        header.planFile().ifPresent(file -> line.addProperty("planFile", file));
        line.addProperty("plan", header.planText());
        return OneLineJson.of(line);
    }

    static LogHeader read(JsonObject line) throws UnusableLine {
        Fields fields = new Fields("the header", line);
        if (!fields.optionalText("format").equals(Optional.of(FORMAT))) {
            throw new UnusableLine("this is no session log: its first line lacks \"format\":\"" + FORMAT + '"');
        }
        OptionalLong version = fields.optionalNumber("version");
        if (version.isEmpty()) {
            throw fields.missing("version", "such as " + VERSION);
        }
        if (version.getAsLong() < OLDEST || version.getAsLong() > VERSION) {
            throw new UnusableLine("the log has format version " + version.getAsLong() + " and this program reads "
                    + OLDEST + " to " + VERSION + "; use the version of Buzzout that wrote it"
                    + fields.optionalText("program")
                            .map(program -> ", " + Fields.quoted(program))
                            .orElse(""));
        }
        return new LogHeader(
                fields.optionalText("program"),
                started(fields),
                fields.optionalText("unit"),
                fields.optionalText("planFile"),
                plan(fields));
    }

    private static Optional<OffsetDateTime> started(Fields fields) throws UnusableLine {
        Optional<String> text = fields.optionalText("started");
        try {
            return text.map(WrittenTime::read);
        } catch (DateTimeException e) {
            throw new UnusableLine("\"started\" of the header must look like 2026-11-25T10:14:05+01:00");
        }
    }

    /** The plan's text, or its lines. */
    private static String plan(Fields fields) throws UnusableLine {
        JsonElement plan = fields.object().get("plan");
        if (!(plan instanceof JsonArray lines)) {
            return fields.text("plan");
        }
        StringBuilder text = new StringBuilder();
        for (JsonElement line : lines) {
            if (!(line instanceof JsonPrimitive value && value.isString())) {
                throw new UnusableLine("\"plan\" of the header must be a text or a list of texts, one for each line");
            }
            text.append(value.getAsString()).append('\n');
        }
        return text.toString();
    }
}
