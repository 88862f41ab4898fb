package buzzout.journal;

import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.session.Action;
import buzzout.session.Event;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A program of its own that writes numbered events without end, and says each number once its event is on the disk. */
final class LogWriting {
    static final String REFUSED = "refused ";

    private static final Plan PLAN = ExamplePlan.quayside();
    private static final int SIZES = 7;

    private LogWriting() {}

    public static void main(String[] arguments) throws IOException {
        Path path = Path.of(arguments[0]);
        int number = Integer.parseInt(arguments[1]);
        try (OutputStream out = new FileOutputStream(FileDescriptor.out);
                Journal journal = journal(path)) {
            int round = 0;
            while (true) {
                List<Event> events = new ArrayList<>();
                for (int each = 0; each < 1 << (round % SIZES); each++) {
                    events.add(event(number + each));
                }
                try {
                    journal.append(events);
                    number += events.size();
                    round++;
                    out.write(((number - 1) + "\n").getBytes(StandardCharsets.US_ASCII));
                } catch (LogNotWritten refused) {
                    out.write((REFUSED + refused.sentence() + "\n").getBytes(StandardCharsets.UTF_8));
                    System.in.read(); // tries again when told to, so that nobody reads what it is taking back
                }
            }
        }
    }

    /** What the event of this number is. */
    static Event event(int number) {
        return new Event.ByPerson(number, new Action.Noted("number " + number + " " + "-".repeat(number % 90)));
    }

    private static Journal journal(Path path) throws IOException {
        return Files.exists(path)
                ? ResumedLog.open(path).goOn(PLAN).journal()
                : Journal.create(path, EveryEvent.HEADER, PLAN);
    }

    /** The command line that writes on from a number. */
    static List<String> command(Path path, int number) {
        return List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-cp",
                System.getProperty("java.class.path"),
                LogWriting.class.getName(),
                path.toString(),
                String.valueOf(number));
    }
}
