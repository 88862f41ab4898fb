package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.line.Columns.Row;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What {@code --help} prints, of the program and of each command, is in one file. {@code mvn test -Dtest=HelpTextsTest
 * -Dbuzzout.golden=write} writes it anew.
 */
class HelpTextsTest {
    private static final Path GOLDEN = Path.of("src/test/resources/buzzout/cli/help.txt");

    @Test
    void help_is_as_it_was(@TempDir Path folder) throws IOException {
        CommandLineCase line = CommandLineCase.in(folder);
        StringBuilder all =
                new StringBuilder("$ buzzout --help\n" + line.run("--help").out());
        for (Row command : Commands.IN_SHORT) {
            all.append("\n$ buzzout ").append(command.word()).append(" --help\n");
            all.append(line.run(command.word(), "--help").out());
        }
        if ("write".equals(System.getProperty("buzzout.golden"))) {
            Files.writeString(GOLDEN, all);
        }
        assertEquals(Files.readString(GOLDEN), all.toString());
    }

    @Test
    void a_command_is_described_by_its_own_name_and_has_no_two_options_of_one_name() {
        for (Row command : Commands.IN_SHORT) {
            Commands.Known known = Commands.named(command.word()).orElseThrow();
            assertEquals("buzzout " + command.word(), known.usage().name());
            assertEquals(command.meaning(), known.usage().description().get(0));
            List<String> names = known.usage().names();
            assertEquals(names.size(), new HashSet<>(names).size(), command.word() + names);
        }
    }
}
