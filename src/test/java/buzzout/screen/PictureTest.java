package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.Suspect;
import buzzout.plan.Plan;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Session;
import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whole screens, compared as text. After a change on purpose, {@code mvn test -Dtest=PictureTest
 * -Dbuzzout.pictures=write} writes them anew; look at the difference before it is committed.
 */
class PictureTest {
    private static final Path FOLDER = Path.of("src/test/resources/buzzout/screen");

    private static final ProbeEvent UNPLUGGED =
            new ProbeEvent.LinkLost("the probe was unplugged; plug it in again and the session goes on.");

    /** A screen of some size; its text is in the file of this name. */
    record Scene(String name, View view, int columns, int rows) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Scene> scenes() {
        View full = Views.midSession(Views.FULL);
        View ascii = Views.midSession(Views.ASCII);
        View turned = full.with(full.focus().flipped());
        return Stream.of(
                new Scene("cap-80x24", full, 80, 24),
                new Scene("cap-120x40", full, 120, 40),
                new Scene("cap-200x60", full, 200, 60),
                new Scene("solder-80x24", turned, 80, 24),
                new Scene("ascii-80x24", ascii, 80, 24),
                new Scene("ascii-solder-120x40", ascii.with(ascii.focus().flipped()), 120, 40),
                new Scene("second-finding-80x24", choosing(full, 2), 80, 24),
                new Scene("close-up-row-80x24", closeUp(full, "open:R3:M:,"), 80, 24),
                new Scene("close-up-column-80x24", closeUp(full, "open:C6:B:Space"), 80, 24),
                new Scene("close-up-bridge-80x24", closeUp(full, "bridge:C6:C7:G:H"), 80, 24),
                new Scene("close-up-rows-bridged-80x24", closeUp(full, "bridge:R2:R3:G:B"), 80, 24),
                new Scene("close-up-lead-80x24", closeUp(full, "lead-off:R1"), 80, 24),
                new Scene("close-up-jumper-120x40", closeUp(full, "jumper-off:R4:Space:Enter"), 120, 40),
                new Scene("close-up-board-80x24", closeUp(full, "mirrored"), 80, 24),
                new Scene("close-up-ascii-80x24", closeUp(ascii, "reversed:V"), 80, 24),
                new Scene("close-up-second-suspect-80x24", looking(looking(choosing(full, 2))), 80, 24),
                new Scene("help-80x24", full.with(full.focus().withHelp(true)), 80, 24),
                new Scene("flex-80x24", at(Views.flexing()), 80, 24),
                new Scene("flex-200x60", at(Views.flexing()), 200, 60),
                new Scene("together-80x24", at(Views.holding()), 80, 24),
                new Scene("together-200x60", at(Views.holding()), 200, 60),
                new Scene("bounce-80x24", bouncing(), 80, 24),
                new Scene("bounce-200x60", bouncing(), 200, 60),
                new Scene("no-probe-80x24", at(Views.sitting()), 80, 24),
                new Scene("quiet-check-80x24", at(Views.sitting().found()), 80, 24),
                new Scene(
                        "link-down-80x24",
                        at(Views.sitting().found().quietCheckDone().press(0).hear(UNPLUGGED)),
                        80,
                        24),
                new Scene("roll-call-80x24", calling(Views.FULL), 80, 24),
                new Scene("roll-call-200x60", calling(Views.FULL), 200, 60),
                new Scene("roll-call-ascii-80x24", calling(Views.ASCII), 80, 24),
                new Scene("roll-call-solder-80x30", calling(Views.FULL).with(Focus.FIRST.flipped()), 80, 30),
                new Scene("roll-call-mishap-80x24", at(called("Up").press(0).tell(new Action.Called(9))), 80, 24),
                new Scene("roll-call-large-80x24", called(Boards.panel(16, 32), 300), 80, 24),
                new Scene("repairing-80x24", repairing(choosing(full, 1), false), 80, 24),
                new Scene("unplugged-80x24", repairing(choosing(full, 1), true), 80, 24),
                new Scene("warning-80x24", warned(full), 80, 24),
                new Scene("large-80x24", Boards.view(Boards.panel(16, 32), 300), 80, 24),
                new Scene("large-200x60", Boards.view(Boards.panel(16, 32), 300), 200, 60),
                new Scene("staggered-80x24", Boards.view(Boards.staggered(), 5), 80, 24),
                new Scene("too-small-60x20", full, 60, 20));
    }

    private static View at(Sitting sitting) {
        return Views.view(Views.FULL, sitting.snapshot());
    }

    private static View calling(Look look) {
        return Views.view(
                look,
                called("Up")
                        .press(Views.key("Up").index())
                        .tell(new Action.Called(27))
                        .snapshot());
    }

    private static Sitting called(String name) {
        return Views.sitting()
                .found()
                .quietCheckDone()
                .tell(new Action.RollCallBegun())
                .tell(new Action.Called(Views.key(name).index()));
    }

    private static View called(Plan plan, int key) {
        Sitting sitting = new Sitting(plan, Circuit.of(plan)).found().quietCheckDone();
        return at(sitting.tell(new Action.RollCallBegun()).tell(new Action.Called(key)));
    }

    private static View repairing(View view, boolean unplugged) {
        Session session = view.session()
                .after(new Event.ByPerson(
                        60_000, new Action.Repaired(Views.bridge().code(view.plan()))));
        Session then = unplugged ? session.after(new Event.FromProbe(61_000, UNPLUGGED)) : session;
        return view.with(
                new Snapshot(then, view.snapshot().diagnosis(), view.snapshot().events()));
    }

    /** Every key bounced a little longer than the one before it, and "." far too long. */
    private static View bouncing() {
        Sitting sitting = Views.sitting().found().quietCheckDone();
        for (int key = 0; key < 33; key++) {
            sitting.bounce(key, 140L * key).bounce(key, 60L * key);
        }
        sitting.bounce(Views.key(".").index(), 23_400).bounce(Views.key(".").index(), 800);
        View view = at(sitting);
        return view.with(view.focus().withBounce(true));
    }

    private static View warned(View view) {
        return view.with(view.snapshot()
                .withWarning("The log cannot be written: no space left. Free some; nothing is lost yet."));
    }

    /** With one finding, seen close by. */
    private static View closeUp(View view, String code) {
        Fault fault = Catalogue.find(Views.QUAYSIDE, code).orElseThrow();
        Suspect suspect = new Suspect(fault, 0.97);
        Finding finding = new Finding(List.of(suspect), List.of(), 0.97, List.of(), Optional.empty());
        Snapshot found = new Snapshot(
                view.session(),
                new Diagnosis(List.of(finding), 0, List.of()),
                view.snapshot().events());
        return looking(view.with(found));
    }

    private static View looking(View view) {
        return view.with(Page.lookingClose(view, new TerminalSize(80, 24)));
    }

    private static View choosing(View view, int times) {
        View then = view;
        for (int time = 0; time < times; time++) {
            then = then.with(Page.choosing(then, new TerminalSize(80, 24), 1));
        }
        return then;
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void the_screen_looks_as_it_did(Scene scene) throws IOException {
        String text = Picture.of(scene.view(), scene.columns(), scene.rows()).text();
        Path file = FOLDER.resolve(scene.name() + ".txt");
        if ("write".equals(System.getProperty("buzzout.pictures"))) {
            Files.writeString(file, text);
        }
        assertEquals(Files.readString(file), text);
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void without_colour_only_bold_and_reverse_are_used(Scene scene) throws IOException {
        View plain = View.of(
                new Setting(Optional.empty(), Optional.empty(), new Look(false, false), false),
                scene.view().snapshot(),
                scene.view().focus());
        DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(scene.columns(), scene.rows()));
        Paper paper = Paper.on(terminal, plain.look().colour());
        paper.show(Page.painted(plain, paper.size()));
        for (int row = 0; row < scene.rows(); row++) {
            for (int column = 0; column < scene.columns(); column++) {
                TextCharacter cell = terminal.getCharacter(column, row);
                assertEquals(TextColor.ANSI.DEFAULT, cell.getForegroundColor());
                assertEquals(TextColor.ANSI.DEFAULT, cell.getBackgroundColor());
                assertTrue(List.of(SGR.BOLD, SGR.REVERSE).containsAll(cell.getModifiers()));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void in_ascii_nothing_else_is_sent(Scene scene) {
        View ascii = View.of(
                new Setting(Optional.of("Q-03"), Optional.of("sessions/…"), Views.ASCII, true),
                scene.view().snapshot(),
                scene.view().focus());
        String text = Picture.of(ascii, scene.columns(), scene.rows()).text();
        assertTrue(text.chars().allMatch(c -> c == '\n' || (c >= ' ' && c <= '~')), text);
    }

    @Test
    void untested_keys_stand_out_in_reverse_and_no_others_do() {
        Sheet sheet = Picture.of(Views.midSession(Views.FULL), 80, 24);
        long reversed = IntStream.range(0, sheet.columns() * sheet.rows())
                .filter(cell -> sheet.ink(cell % sheet.columns(), cell / sheet.columns())
                        .reverse())
                .count();
        int insideOfTenSingleKeys = 10 * 5;
        int insideOfTwoDoubleKeys = 2 * 11;
        int legend = "· 12 untested".length();
        assertEquals(insideOfTenSingleKeys + insideOfTwoDoubleKeys + legend, reversed);
    }
}
