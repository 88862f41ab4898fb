package buzzout.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which numbered readings came, in the order in which each first did, and how often: a joint can come and go for hours. */
final class Tally {
    private final Map<Integer, Integer> places = new HashMap<>();
    private final List<Integer> answers = new ArrayList<>();
    private int[] times = new int[1];

    void add(int answer, int often) {
        int place = places.computeIfAbsent(answer, first -> answers.size());
        if (place == answers.size()) {
            answers.add(answer);
            times = place < times.length ? times : Arrays.copyOf(times, 2 * place);
        }
        times[place] += often;
    }

    boolean isEmpty() {
        return answers.isEmpty();
    }

    /** Each once. */
    List<Integer> answers() {
        return answers;
    }

    /** How often the answer at this place of {@link #answers} came. */
    int times(int place) {
        return times[place];
    }

    int timesOf(int answer) {
        Integer place = places.get(answer);
        return place == null ? 0 : times[place];
    }
}
