package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The loop, on a terminal in memory: each test types everything first, so that nothing needs waiting for. */
@Timeout(60)
class BoardScreenTest {
    private static final Setting DEMO = new Setting(Optional.empty(), Optional.empty(), Views.FULL, true);

    private final DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(80, 24));
    private final Bench bench = new Bench(Views.QUAYSIDE);
    private final CountDownLatch end = new CountDownLatch(1);

    @Test
    void what_concerns_the_session_reaches_it_in_order() throws IOException {
        type('n');
        terminal.addInput(new KeyStroke(KeyType.ArrowRight));
        terminal.addInput(new KeyStroke(KeyType.Enter));
        type('e');
        type('q');
        BoardScreen.show(terminal, DEMO, bench, end);
        assertEquals(
                List.of(new Request.NothingCame(0), new Request.Press(1), new Request.AllPressed()), bench.asked());
    }

    @Test
    void m_mutes_and_says_so_and_unmutes() throws IOException {
        Setting heard = DEMO.with(new Sound(true, true, true));
        View view = View.of(heard, bench.now(), Focus.FIRST);
        assertTrue(
                Picture.of(view, 80, 24).text().lines().findFirst().orElse("").contains("  muted  ATmega32U4"));
        View loud = view.with(heard.with(heard.sound().turned()));
        assertFalse(Picture.of(loud, 80, 24).text().contains("muted"));
        assertEquals(Optional.of(new Command.Mute()), Keys.command(new KeyStroke('m', false, false), view));
        type('m');
        type('q');
        BoardScreen.show(terminal, heard, bench, end);
        assertEquals(List.of(), bench.asked());
    }

    @Test
    void in_a_terminal_too_small_to_read_only_quitting_works() throws IOException {
        terminal.setTerminalSize(new TerminalSize(60, 20));
        type('e');
        type('q');
        BoardScreen.show(terminal, DEMO, bench, end);
        assertEquals(List.of(), bench.asked());
    }

    @Test
    void when_the_end_comes_without_a_keystroke_what_was_on_the_terminal_is_back() throws IOException {
        terminal.putString("$ buzzout");
        end.countDown();
        BoardScreen.show(terminal, DEMO, bench, end);
        assertEquals("$", terminal.getCharacter(0, 0).getCharacterString());
    }

    @Test
    void trouble_in_the_program_is_passed_on() {
        type('u');
        Throwable trouble =
                assertThrows(IllegalStateException.class, () -> BoardScreen.show(terminal, DEMO, bench, end));
        assertEquals("the program's own trouble", trouble.getMessage());
    }

    private void type(char letter) {
        terminal.addInput(new KeyStroke(letter, false, false));
    }
}
