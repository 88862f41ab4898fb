package buzzout.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import buzzout.journal.LogTarget;
import buzzout.plan.PlanTarget;
import buzzout.probe.LinesTarget;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The inputs that were kept, as plain tests: what fuzzing found interesting, or wrong once, and each of them spoiled a
 * few hundred times. The long run is in DEVELOPERS.md.
 */
class KeptCorpusTest {
    private static final Path KEPT = Path.of("src/test/resources/buzzout/fuzz");
    private static final int SPOILED = "full".equals(System.getProperty("buzzout.campaign")) ? 20_000 : 200;
    private static final long SEED = 3;

    interface Target {
        void take(byte[] input) throws IOException;
    }

    @Test
    void no_plan_file_brings_the_reader_down() throws IOException {
        tryAll("plan", PlanTarget::fuzzerTestOneInput);
    }

    @Test
    void no_log_brings_the_reader_down() throws IOException {
        tryAll("log", LogTarget::fuzzerTestOneInput);
    }

    @Test
    void nothing_from_a_probe_brings_the_talk_down() throws IOException {
        tryAll("lines", LinesTarget::fuzzerTestOneInput);
    }

    private static void tryAll(String name, Target target) throws IOException {
        List<Path> kept;
        try (Stream<Path> files = Files.list(KEPT.resolve(name))) {
            kept = files.sorted().toList();
        }
        assertTrue(kept.size() >= 5, name + " has its corpus");
        int tried = 0;
        for (Path file : kept) {
            byte[] input = Files.readAllBytes(file);
            take(target, input, file + " as it is");
            Random random = new Random(SEED);
            for (int time = 0; time < SPOILED; time++, tried++) {
                take(target, spoiled(input, random), file + " spoiled, seed " + SEED + ", time " + time);
            }
        }
        System.out.println("figure: kept inputs as " + name + ", and each spoiled | " + kept.size() + " and " + tried
                + ", no exception | none");
    }

    private static void take(Target target, byte[] input, String what) {
        try {
            target.take(input);
        } catch (IOException | RuntimeException | StackOverflowError | AssertionError e) {
            fail(what + ": " + e, e);
        }
    }

    /** A few bytes flipped, lost, doubled or moved. */
    private static byte[] spoiled(byte[] input, Random random) {
        byte[] bytes = input;
        for (int times = 1 + random.nextInt(4); times > 0 && bytes.length > 1; times--) {
            int at = random.nextInt(bytes.length);
            int length = 1 + random.nextInt(Math.min(bytes.length - at, 12));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            switch (random.nextInt(4)) {
                case 0 -> {
                    byte[] flipped = bytes.clone();
                    flipped[at] ^= (byte) (1 << random.nextInt(8));
                    out.writeBytes(flipped);
                }
                case 1 -> {
                    out.write(bytes, 0, at);
                    out.write(bytes, at + length, bytes.length - at - length);
                }
                case 2 -> {
                    out.write(bytes, 0, at + length);
                    out.write(bytes, at, bytes.length - at);
                }
                default -> {
                    int to = random.nextInt(bytes.length);
                    out.write(bytes, 0, to);
                    out.writeBytes(Arrays.copyOfRange(bytes, at, at + length));
                    out.write(bytes, to, bytes.length - to);
                }
            }
            bytes = out.toByteArray();
        }
        return bytes;
    }
}
