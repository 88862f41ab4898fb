package buzzout.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Measures all that a hand can feel and prints one table. Arguments: which to measure, or {@code all}. */
final class Benchmarks {
    private static final int PRESSES = Integer.getInteger("buzzout.presses", 1_000);

    private Benchmarks() {}

    private interface Benchmark {
        void measure(List<Row> rows) throws IOException, InterruptedException;
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Map<String, Benchmark> all = new LinkedHashMap<>();
        all.put("sweeps", Sweeps::measure);
        all.put("press", rows -> PressToScreen.measure(PRESSES, rows));
        all.put("starts", Starts::measure);
        all.put("logs", Logs::measure);
        all.put("frames", Frames::measure);
        all.put("growth", Growth::measure);
        List<String> wanted = List.of(arguments);
        List<Row> rows = new ArrayList<>();
        for (Map.Entry<String, Benchmark> each : all.entrySet()) {
            if (wanted.contains("all") || wanted.contains(each.getKey())) {
                System.err.println("measuring " + each.getKey() + " ...");
                each.getValue().measure(rows);
            }
        }
        System.out.print(Row.table(rows));
    }
}
