package buzzout.plan;

import buzzout.plan.Problem.Severity;
import buzzout.toml.Spot;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Collects the problems of one file. */
final class Problems {
    /** In a file with more problems than this, looking for what was meant would only take time. */
    private static final int MOST_HINTED = 200;

    private final String fileName;
    private final List<Problem> found = new ArrayList<>();
    private final List<Problem> lacks = new ArrayList<>();
    private boolean allRead = true;

    Problems(String fileName) {
        this.fileName = Visible.of(fileName);
    }

    void error(Spot at, String message) {
        found.add(problem(at, Severity.ERROR, message));
    }

    void note(Spot at, String message) {
        found.add(problem(at, Severity.NOTE, message));
    }

    /** Something that is not there; told only if everything could be read, for else it may stand in what could not. */
    void lack(Spot at, String message) {
        lacks.add(problem(at, Severity.ERROR, message));
    }

    /** An error that leaves part of the plan unread. */
    void unread(Spot at, String message) {
        error(at, message);
        allRead = false;
    }

    private Problem problem(Spot at, Severity severity, String message) {
        return new Problem(fileName, at.line(), at.column(), severity, message);
    }

    /** Such as {@code did you mean "rows"?}, or else what to do instead. */
    String hint(String meant, Collection<String> names, String otherwise) {
        return nearest(meant, names)
                .map(name -> "did you mean " + Visible.quoted(name) + "?")
                .orElse(otherwise);
    }

    /** The name that was probably meant. */
    Optional<String> nearest(String meant, Collection<String> names) {
        return found.size() + lacks.size() < MOST_HINTED ? Nearest.to(meant, names) : Optional.empty();
    }

    boolean haveErrors() {
        return holdError(found) || (allRead && holdError(lacks));
    }

    List<Problem> sorted() {
        List<Problem> all = new ArrayList<>(found);
        if (allRead) {
            all.addAll(lacks);
        }
        all.sort(Problems::inOrderOfFile);
        return List.copyOf(all);
    }

    private static boolean holdError(List<Problem> problems) {
        for (Problem problem : problems) {
            if (problem.severity() == Severity.ERROR) {
                return true;
            }
        }
        return false;
    }

    private static int inOrderOfFile(Problem one, Problem other) {
        return one.line() == other.line()
                ? Integer.compare(one.column(), other.column())
                : Integer.compare(one.line(), other.line());
    }
}
