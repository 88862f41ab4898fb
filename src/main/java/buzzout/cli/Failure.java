package buzzout.cli;

import java.util.List;

/** A command cannot go on: sentences for the person, and the exit status. */
final class Failure extends Exception {
    private static final long serialVersionUID = 1;

    private final int status;
    private final transient List<String> sentences;

    Failure(int status, String... sentences) {
        this(status, List.of(sentences));
    }

    Failure(int status, List<String> sentences) {
        super(String.join(" ", sentences));
        this.status = status;
        this.sentences = List.copyOf(sentences);
    }

    int status() {
        return status;
    }

    List<String> sentences() {
        return sentences;
    }
}
