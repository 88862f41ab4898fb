package buzzout.e2e;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Each test has a wired board of its own, on a controller that executes the compiled sketch. */
abstract class OnTheSketch {
    @TempDir
    Path folder;

    ProbedBoard board;

    @BeforeAll
    static void needTheBench() throws IOException, InterruptedException {
        Needs.theSketchBench();
    }

    @BeforeEach
    void wire() throws IOException, InterruptedException {
        board = ProbedBoard.in(folder);
    }

    @AfterEach
    void putAway() {
        board.close();
    }
}
