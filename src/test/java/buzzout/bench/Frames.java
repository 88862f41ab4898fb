package buzzout.bench;

import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.screen.DrawnFrames;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;

/** What one frame costs at 200 by 60, in bytes and in milliseconds of the processor. */
final class Frames {
    private static final int FRAMES = Integer.getInteger("buzzout.frames", 1000);

    private Frames() {}

    private interface Frame {
        long draw(int number) throws IOException;
    }

    static void measure(List<Row> rows) throws IOException {
        Plan plan = ExamplePlan.quayside();
        DrawnFrames frames = DrawnFrames.of(plan, PtyTerminal.COLUMNS, PtyTerminal.ROWS);
        rows.addAll(
                of("one more press", number -> frames.press(number % plan.keys().size())));
        rows.addAll(of("every cell anew", number -> frames.whole()));
        rows.addAll(of("nothing changed", number -> frames.same()));
    }

    private static List<Row> of(String what, Frame frame) throws IOException {
        double[] millis = new double[FRAMES];
        long[] bytes = new long[FRAMES];
        for (int number = 0; number < FRAMES; number++) {
            int each = number;
            millis[number] = Processor.millis(() -> bytes[each] = frame.draw(each));
        }
        Arrays.sort(millis);
        Arrays.sort(bytes);
        return List.of(
                Row.of("frame, " + what + ", processor time", millis[FRAMES / 2], "ms"),
                Row.of("frame, " + what + ", written", (double) bytes[FRAMES / 2], "bytes"));
    }
}
