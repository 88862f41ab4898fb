package buzzout.diagnosis;

import java.util.Arrays;

/** What a board with certain faults would show, as numbers of readings. */
final class Forecast {
    private final int quiet;
    private final int[] answers;

    private Forecast(int quiet, int[] answers) {
        this.quiet = quiet;
        this.answers = answers;
    }

    /** Takes the array over: it must not be changed any more. */
    static Forecast of(int quiet, int[] answers) {
        return new Forecast(quiet, answers);
    }

    /** The sweep without a press. */
    int quiet() {
        return quiet;
    }

    /** What a key's press adds to the quiet sweep; trials follow the keys. */
    int answer(int asked) {
        return answers[asked];
    }

    /** The first key or trial from one on of which another forecast says otherwise; {@link #asked} where none is left. */
    int differing(Forecast other, int from) {
        int at = Arrays.mismatch(answers, from, answers.length, other.answers, from, answers.length);
        return at < 0 ? answers.length : from + at;
    }

    /** How many keys and trials there are. */
    int asked() {
        return answers.length;
    }

    int[] copyOfAnswers() {
        return answers.clone();
    }
}
