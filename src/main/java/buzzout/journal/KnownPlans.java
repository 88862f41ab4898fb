package buzzout.journal;

import buzzout.plan.PlanFile;
import buzzout.plan.PlanReader;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Plans as they were read, by their text: most logs of a folder hold the same. For any number of threads. */
public final class KnownPlans {
    /** Strangers' logs may hold a plan each. */
    private static final int MOST = 32;

    /** By the length of its file's name, the name and its text. */
    private final Map<String, PlanFile> read = new ConcurrentHashMap<>();

    PlanFile read(String text, String name) {
        if (read.size() >= MOST) {
            read.clear();
        }
        return read.computeIfAbsent(name.length() + name + text, any -> PlanReader.read(text, name));
    }
}
