package buzzout.journal;

import buzzout.plan.PlanFile;
import buzzout.plan.PlanReader;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Plans as they were read, by their text: most logs of a folder hold the same. For any number of threads. */
public final class KnownPlans {
    /** Strangers' logs may hold a plan each. */
    private static final int MOST = 32;

    private final Map<Text, PlanFile> read = new ConcurrentHashMap<>();

    private record Text(String text, String name) {}

    PlanFile read(String text, String name) {
        if (read.size() >= MOST) {
            read.clear();
        }
        return read.computeIfAbsent(new Text(text, name), plan -> PlanReader.read(plan.text, plan.name));
    }
}
