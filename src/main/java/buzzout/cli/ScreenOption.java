package buzzout.cli;

import buzzout.screen.BoardScreen;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option of commands that show a screen. */
final class ScreenOption {
    @Option(
            names = "--window",
            negatable = true,
            description = "Show the screen in a window of its own, as on Windows without asking; or not even there.")
    private Optional<Boolean> window = Optional.empty();

    boolean window() {
        return window.orElse(false);
    }

    /** Where to show a session; to be asked before anything begins, because it fails where no window can be opened. */
    Canvas canvas(Surroundings surroundings) throws Failure {
        if (window()) {
            Optional<String> obstacle = BoardScreen.windowObstacle();
            if (obstacle.isPresent()) {
                throw new Failure(Status.USAGE, obstacle.get(), "Leave --window out to go on without one.");
            }
            return Canvas.WINDOW;
        }
        if (surroundings.obstacle().isEmpty()) {
            return Canvas.TERMINAL;
        }
        boolean unasked = window.isEmpty() && surroundings.mayDraw() && BoardScreen.prefersWindow();
        return unasked ? Canvas.WINDOW : Canvas.NONE;
    }
}
