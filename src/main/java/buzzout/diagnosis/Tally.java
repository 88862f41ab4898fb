package buzzout.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which numbered readings came, in the order in which each first did, and how often: a joint can come and go for hours. */
final class Tally {
    private final Map<Integer, Integer> places = new HashMap<>();
    private int[] answers = new int[1];
    private int[] times = new int[1];
    private int count;

    void add(int answer, int often) {
        int place = places.computeIfAbsent(answer, first -> count);
        if (place == count) {
            answers = count < answers.length ? answers : Arrays.copyOf(answers, 2 * count);
            times = count < times.length ? times : Arrays.copyOf(times, 2 * count);
            answers[count++] = answer;
        }
        times[place] += often;
    }

    boolean isEmpty() {
        return count == 0;
    }

    /** How many different ones there are. */
    int count() {
        return count;
    }

    /** Each once. */
    List<Integer> answers() {
        List<Integer> each = new ArrayList<>(count);
        for (int place = 0; place < count; place++) {
            each.add(answers[place]);
        }
        return each;
    }

    int answer(int place) {
        return answers[place];
    }

    /** How often the answer at this place came. */
    int times(int place) {
        return times[place];
    }

    int timesOf(int answer) {
        Integer place = places.get(answer);
        return place == null ? 0 : times[place];
    }
}
