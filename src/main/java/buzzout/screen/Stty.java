package buzzout.screen;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Asks and sets the terminal that the input comes from. */
final class Stty {
    private Stty() {}

    /** What it says to these words; what it has to say against them changes nothing. */
    static String run(String... words) throws IOException {
        List<String> command = new ArrayList<>(List.of("/bin/stty"));
        command.addAll(List.of(words));
        Process stty = new ProcessBuilder(command)
                .redirectInput(ProcessBuilder.Redirect.INHERIT)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (InputStream said = stty.getInputStream()) {
            return new String(said.readAllBytes(), StandardCharsets.UTF_8).trim();
        }
    }
}
