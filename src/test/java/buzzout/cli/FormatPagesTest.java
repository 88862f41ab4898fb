package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every JSON document says its format and version, and its page names them and every field. */
class FormatPagesTest {
    /** Objects whose fields are named by the board's keys, or by words that the page refers to elsewhere. */
    private static final Set<String> BY_NAME = Set.of("keys", "contacts", "states", "faultsByKind");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "diagnosis  | 1 | diagnose sessions/Q-03-first-test.jsonl --json",
                "comparison | 1 | compare sessions/Q-03-first-test.jsonl sessions/Q-03-retest.jsonl --json",
                "history    | 1 | history sessions --json",
            })
    void a_documents_fields_are_those_of_its_page(String format, int version, String command) {
        CommandLineCase line = new CommandLineCase(Path.of("").toAbsolutePath());
        String page = line.run("format", format).out();
        assertTrue(page.contains("Format name `buzzout-" + format + "`, version " + version + "."), page);
        JsonObject document =
                JsonParser.parseString(line.run(command.split(" ")).out()).getAsJsonObject();
        assertEquals("buzzout-" + format, document.get("format").getAsString());
        assertEquals(version, document.get("version").getAsInt());
        Set<String> fields = new TreeSet<>();
        gather(document, fields);
        assertTrue(fields.size() > 10, fields.toString());
        fields.removeIf(field -> page.contains("`" + field + "`"));
        assertEquals(Set.of(), fields);
    }

    private static void gather(JsonElement element, Set<String> fields) {
        if (element.isJsonArray()) {
            element.getAsJsonArray().forEach(each -> gather(each, fields));
        } else if (element.isJsonObject()) {
            element.getAsJsonObject().entrySet().forEach(entry -> {
                fields.add(entry.getKey());
                if (BY_NAME.contains(entry.getKey()) && entry.getValue().isJsonObject()) {
                    entry.getValue().getAsJsonObject().asMap().values().forEach(each -> gather(each, fields));
                } else {
                    gather(entry.getValue(), fields);
                }
            });
        }
    }
}
