package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import buzzout.circuit.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Keeps the contract through a real serial device: a pty, with a simulated board in real time behind it. */
class PtyTest extends ProbeContract {
    @TempDir
    Path folder;

    @BeforeAll
    static void needs_python() {
        boolean there = PtyBoard.isPossible();
        assertTrue(there || !"true".equals(System.getenv("CI")), "the bench needs python3 with its pty module");
        assumeTrue(there, "python3 with its pty module makes the pty");
    }

    @Override
    Bench bench(Fault... faults) throws IOException {
        return PtyBoard.with(faults);
    }

    @Test
    void says_that_the_probe_was_unplugged_when_the_device_goes() throws Exception {
        try (PtyBoard board = PtyBoard.with();
                Play play = new Play(board.source())) {
            play.first(ProbeEvent.WholeState.class);
            board.pull();

            String why = play.first(ProbeEvent.LinkLost.class).why();
            assertEquals(PortTrouble.unplugged(board.path()), why);
        }
    }

    @Test
    void closes_while_a_read_waits() throws Exception {
        try (PtyBoard board = PtyBoard.with()) {
            LiveProbe probe =
                    LiveProbe.start(TestBoard.plan(), board.source(), SettleTime.USUAL, event -> {}, failure -> {});
            probe.close();
            assertTrue(!probe.isRunning());

            board.source().open().link().close();
        }
    }

    @Test
    void says_what_is_wrong_with_what_is_no_port() throws Exception {
        String none = folder.resolve("none").toString();
        String file = Files.writeString(folder.resolve("notes.txt"), "no port").toString();

        assertEquals(PortTrouble.missing(none), why(none));
        assertTrue(why(file).contains("is no serial port"), why(file));
    }

    @Test
    void says_that_another_program_has_the_port() throws Exception {
        try (PtyBoard board = PtyBoard.with();
                ByteLink first = SerialPorts.open(board.path(), true)) {
            assertEquals(PortTrouble.inUse(board.path()), why(board.path()));
            assertEquals(0, first.read(new byte[10], 10));
        }
    }

    private static String why(String path) {
        return assertThrows(LinkDown.class, () -> SerialPorts.open(path, true)).why();
    }
}
