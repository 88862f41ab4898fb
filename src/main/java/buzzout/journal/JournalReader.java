package buzzout.journal;

import buzzout.plan.Plan;
import buzzout.plan.PlanFile;
import buzzout.session.Event;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.Strictness;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a session log: takes every line that it can, and says which it could not take. */
public final class JournalReader {
    /** Far more than a day's session; what lies beyond is left out, so that no file exhausts the memory. */
    private static final int MOST_EVENTS = 2_000_000;

    private static final int MOST_NESTING = 16;

    private final LogProblems problems;
    private final LogLines lines;
    private final KnownPlans plans;

    private JournalReader(String name, InputStream bytes, KnownPlans plans) {
        problems = new LogProblems(name);
        lines = new LogLines(bytes);
        this.plans = plans;
    }

    public static LogFile read(Path path) {
        return read(path, new KnownPlans());
    }

    /** The same for one of many logs, of which few have a plan of their own. */
    public static LogFile read(Path path, KnownPlans plans) {
        String name = path.toString();
        if (Files.isDirectory(path)) {
            return LogFile.unusable(new LogProblem(name, 0, "this is a folder, not a session log"));
        }
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            // A pipe may never give anything, and a device never come to its end.
            return LogFile.unusable(
                    new LogProblem(name, 0, "this is no file but a device or a pipe; copy what it gives into a file"));
        }
        try (InputStream bytes = Files.newInputStream(path)) {
            return read(name, bytes, plans);
        } catch (NoSuchFileException e) {
            return LogFile.unusable(new LogProblem(name, 0, "there is no such file"));
        } catch (AccessDeniedException e) {
            return LogFile.unusable(new LogProblem(name, 0, "you are not allowed to read this file"));
        } catch (FileSystemException e) {
            return LogFile.unusable(new LogProblem(name, 0, "cannot read this file: " + e.getReason()));
        } catch (IOException e) {
            return LogFile.unusable(new LogProblem(name, 0, "cannot read this file: " + e.getMessage()));
        }
    }

    /** Reads a log from a stream, which stays open; {@code name} stands before each problem. */
    public static LogFile read(String name, InputStream bytes) throws IOException {
        return read(name, bytes, new KnownPlans());
    }

    private static LogFile read(String name, InputStream bytes, KnownPlans plans) throws IOException {
        JournalReader reader = new JournalReader(name, bytes, plans);
        Optional<SessionLog> log = reader.log();
        return new LogFile(log, reader.problems.list());
    }

    private Optional<SessionLog> log() throws IOException {
        Optional<LogHeader> header = header();
        Optional<Plan> plan = header.flatMap(this::plan);
        if (plan.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new SessionLog(header.get(), plan.get(), events(plan.get())));
    }

    private Optional<LogHeader> header() throws IOException {
        try {
            Optional<LogLines.Line> first = lines.next();
            if (first.isEmpty()) {
                problems.add(0, "the file is empty");
                return Optional.empty();
            }
            return Optional.of(HeaderLine.read(object(first.get())));
        } catch (UnusableLine e) {
            problems.add(1, e.why() + "; nothing else can be read without the plan in this line");
            return Optional.empty();
        }
    }

    private Optional<Plan> plan(LogHeader header) {
        PlanFile file = plans.read(header.planText(), header.planFile().orElse("plan"));
        if (file.plan().isEmpty()) {
            file.problems().forEach(problem -> problems.add(1, "the plan in this line: " + problem));
        }
        return file.plan();
    }

    private List<Event> events(Plan plan) throws IOException {
        EventReader reader = new EventReader(plan);
        Sequence sequence = new Sequence(plan);
        List<Event> events = new ArrayList<>();
        while (events.size() < MOST_EVENTS) {
            try {
                Optional<LogLines.Line> line = lines.next();
                if (line.isEmpty()) {
                    return events;
                }
                if (!line.get().text().isBlank()) {
                    Event event = reader.event(object(line.get()));
                    sequence.fault(event)
                            .ifPresent(why -> problems.add(lines.number(), why + "; it counts all the same"));
                    events.add(event);
                }
            } catch (UnusableLine e) {
                problems.add(lines.number(), e.why() + "; the line was left out");
                sequence.miss();
            }
        }
        problems.add(lines.number(), "there are more than " + MOST_EVENTS + " events; the rest was not read");
        return events;
    }

    static JsonObject object(LogLines.Line line) throws UnusableLine {
        try (JsonReader reader = new JsonReader(new StringReader(line.text()))) {
            reader.setStrictness(Strictness.STRICT);
            reader.setNestingLimit(MOST_NESTING);
            JsonElement element = JsonTree.read(reader);
            if (element instanceof JsonObject object && reader.peek() == JsonToken.END_DOCUMENT) {
                return object;
            }
        } catch (JsonParseException | IOException e) {
            if (!line.whole()) {
                throw new UnusableLine("the file ends in the middle of this line");
            }
        }
        throw new UnusableLine("the line is not one JSON object");
    }
}
