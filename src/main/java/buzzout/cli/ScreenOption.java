package buzzout.cli;

import buzzout.line.Either;
import buzzout.line.Given;
import buzzout.screen.BoardScreen;
import buzzout.screen.Opening;
import java.util.Optional;

/** The option of commands that show a screen. */
record ScreenOption(Optional<Boolean> asked) {
    static final Either WINDOW = Either.of(
            "--window", "Show the screen in a window of its own, as on Windows without asking; or not even there.");

    static ScreenOption of(Given given) {
        return new ScreenOption(given.answer(WINDOW));
    }

    boolean window() {
        return asked.orElse(false);
    }

    /** Where to show a session; to be asked before anything begins, because it fails where no window can be opened. */
    Canvas canvas(Surroundings surroundings) throws Failure {
        if (window()) {
            Optional<String> obstacle = BoardScreen.windowObstacle();
            if (obstacle.isPresent()) {
                throw new Failure(Status.USAGE, obstacle.get(), "Leave --window out to go on without one.");
            }
            return new Canvas.Window();
        }
        if (surroundings.obstacle().isEmpty()) {
            // A time zone takes a while to load, and the first line of a log tells the time.
            return new Canvas.OwnTerminal(Opening.begin(surroundings::now));
        }
        boolean unasked = asked.isEmpty() && surroundings.mayDraw() && BoardScreen.prefersWindow();
        return unasked ? new Canvas.Window() : new Canvas.None();
    }
}
