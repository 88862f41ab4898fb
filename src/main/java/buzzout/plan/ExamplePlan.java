package buzzout.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The plan that is built in, for the demo and for reading. */
public final class ExamplePlan {
    public static final String QUAYSIDE_FILE_NAME = "quayside-46.toml";

    private ExamplePlan() {}

    /** Quayside 46: four rows by twelve columns, two keys of double width. */
    public static Plan quayside() {
        return PlanReader.read(quaysideText(), QUAYSIDE_FILE_NAME).plan().orElseThrow();
    }

    /** Its file. */
    public static String quaysideText() {
        try (InputStream in = ExamplePlan.class.getResourceAsStream(QUAYSIDE_FILE_NAME)) {
            if (in == null) {
                throw new IllegalStateException(QUAYSIDE_FILE_NAME + " is missing from the program's own jar");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
