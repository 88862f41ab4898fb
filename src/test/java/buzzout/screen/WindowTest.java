package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.e2e.Needs;
import java.awt.image.BufferedImage;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The screen in a window, on a display that only exists in memory. */
class WindowTest {
    @TempDir
    Path folder;

    private String display = "";
    private Optional<Process> server = Optional.empty();

    @BeforeEach
    void start() throws IOException, InterruptedException {
        Needs.xvfb();
        Process xvfb = new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1280x900x24", "-nolisten", "tcp")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        server = Optional.of(xvfb);
        display = ":"
                + new BufferedReader(new InputStreamReader(xvfb.getInputStream(), StandardCharsets.UTF_8)).readLine();
    }

    @AfterEach
    void stop() {
        server.ifPresent(Process::destroy);
    }

    @ParameterizedTest
    @ValueSource(strings = {"q", "close"})
    void keys_are_typed_into_it_and_it_can_be_left(String way) throws IOException, InterruptedException {
        assertEquals("Quit[] after [Press[key=0], Press[key=1]]\n", said(display, 0, way));
        BufferedImage picture = ImageIO.read(folder.resolve("window.png").toFile());
        assertTrue(picture.getWidth() > 900 && picture.getHeight() > 500, picture.toString());
        assertTrue(
                colours(picture).containsAll(Set.of(0x000000, 0xAAAAAA, 0xFFFFFF, 0x00AA00)),
                "black, grey, white, green");
    }

    @Test
    void without_a_display_it_says_so() throws IOException, InterruptedException {
        assertEquals("There is no display to open a window on.\n", said("", 2, "q"));
    }

    private static Set<Integer> colours(BufferedImage picture) {
        Set<Integer> colours = new TreeSet<>();
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                colours.add(picture.getRGB(x, y) & 0xFFFFFF);
            }
        }
        return colours;
    }

    private String said(String onDisplay, int status, String way) throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String picture = folder.resolve("window.png").toString();
        ProcessBuilder builder = new ProcessBuilder(List.of(
                        java,
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "buzzout.screen.WindowBench",
                        picture,
                        way))
                .redirectErrorStream(true);
        builder.environment().remove("DISPLAY");
        if (!onDisplay.isEmpty()) {
            builder.environment().put("DISPLAY", onDisplay);
        }
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(1, TimeUnit.MINUTES), said);
        assertEquals(status, process.exitValue(), said);
        return said;
    }
}
