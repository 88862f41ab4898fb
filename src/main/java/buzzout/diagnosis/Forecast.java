package buzzout.diagnosis;

/** What a board with certain faults would show, as numbers of readings. */
final class Forecast {
    private final int quiet;
    private final int[] answers;
    private final int[] touches;

    private Forecast(int quiet, int[] answers, int[] touches) {
        this.quiet = quiet;
        this.answers = answers;
        this.touches = touches;
    }

    /** Takes the arrays over: they must not be changed any more. */
    static Forecast of(int quiet, int[] answers, int[] touches) {
        return new Forecast(quiet, answers, touches);
    }

    /** The sweep without a press. */
    int quiet() {
        return quiet;
    }

    /** What this key's press adds to the quiet sweep. */
    int answer(int key) {
        return answers[key];
    }

    /** What a touch adds to the quiet sweep; joints by their place in the list that was asked about. */
    int touch(int joint) {
        return touches[joint];
    }

    int touches() {
        return touches.length;
    }

    int keys() {
        return answers.length;
    }

    int[] copyOfAnswers() {
        return answers.clone();
    }
}
