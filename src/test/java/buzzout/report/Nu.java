package buzzout.report;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import nu.validator.client.EmbeddedValidator;
import org.xml.sax.SAXException;

/** The Nu HTML checker, offline. */
final class Nu {
    /** It does not work out the hash of a style sheet, and so takes one that the policy lets in for blocked. */
    private static final String HASH_UNSEEN = "info warning: Inline style violates Content Security Policy (meta tag)";

    private Nu() {}

    /** What it has to say of a document, one line each; nothing for a valid one. */
    static String says(String html) {
        EmbeddedValidator checker = new EmbeddedValidator();
        checker.setForceHTML(true);
        checker.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        try {
            return checker.validate(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)))
                    .lines()
                    .filter(line -> !line.contains(HASH_UNSEEN))
                    .collect(Collectors.joining("\n"));
        } catch (IOException | SAXException e) {
            throw new AssertionError(e);
        }
    }
}
