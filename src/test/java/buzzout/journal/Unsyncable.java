package buzzout.journal;

import buzzout.plan.ExamplePlan;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A log on a device that takes each line, and refuses to put anything on a disk. */
public final class Unsyncable {
    private static final Path DEVICE = Path.of("/dev/null");

    private Unsyncable() {}

    public static Journal journal() throws IOException {
        return Journal.goingOn(DEVICE, FileChannel.open(DEVICE, StandardOpenOption.WRITE), ExamplePlan.quayside());
    }
}
