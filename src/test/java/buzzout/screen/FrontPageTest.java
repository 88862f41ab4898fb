package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.diagnosis.Engine;
import buzzout.plan.Plan;
import com.googlecode.lanterna.TerminalSize;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * README's picture is a session that can happen: a board with two faults, and what the diagnosis says of it. Written anew
 * as the other pictures are, see {@link PictureTest}.
 */
class FrontPageTest {
    private static final Path FILE = Path.of("src/site/screen.svg");
    private static final Plan PLAN = Views.QUAYSIDE;

    @Test
    void the_picture_is_what_the_screen_looks_like() throws IOException {
        String svg = Svg.of(Picture.of(view(), 80, 24), "Buzzout in mid-session on a Quayside 46");
        if ("write".equals(System.getProperty("buzzout.pictures"))) {
            Files.createDirectories(FILE.toAbsolutePath().getParent());
            Files.writeString(FILE, svg);
        }
        assertEquals(Files.readString(FILE), svg);
    }

    private static View view() {
        List<Fault> faults = Stream.of("open:R3:M:,", "reversed:O")
                .map(code -> Catalogue.find(PLAN, code).orElseThrow())
                .toList();
        Sitting sitting = new Sitting(PLAN, Circuit.of(PLAN, faults)).found().quietCheckDone();
        for (int key = 0; key <= Views.key("Alt").index(); key++) {
            sitting.press(key);
        }
        Setting setting = new Setting(Optional.of("Q-03"), Optional.of("sessions/"), Views.FULL, false);
        Snapshot heard = sitting.snapshot();
        Snapshot weighed =
                sitting.snapshot(new Engine(PLAN).weigh(heard.session().evidence()));
        View view = View.of(setting, weighed, Focus.FIRST);
        return view.with(Page.choosing(view, new TerminalSize(80, 24), -1));
    }
}
