package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.cli.CommandLineCase.Result;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UsageTest {
    @TempDir
    Path folder;

    private CommandLineCase line;

    @BeforeEach
    void open() throws IOException {
        line = CommandLineCase.in(folder);
    }

    @Test
    void without_arguments_it_says_what_to_try_first() {
        Result result = line.run();
        assertEquals(0, result.status());
        assertTrue(result.out().contains("buzzout demo"), result.out());
        assertEquals("", result.err());
    }

    @Test
    void help_documents_every_exit_status() {
        Result result = line.run("--help");
        assertEquals(0, result.status());
        for (String status : new String[] {"0 ", "1 ", "2 ", "3 ", "4 ", "70 ", "128+N "}) {
            assertTrue(result.out().contains("\n  " + status), status + result.out());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "demo",
                "run",
                "new",
                "check",
                "draw",
                "ports",
                "rise",
                "replay",
                "diagnose",
                "report",
                "compare",
                "history",
                "simulate",
                "faults",
                "netlist",
                "learn",
                "export",
                "format"
            })
    void every_command_has_help_that_fits_80_columns(String command) {
        Result result = line.run(command, "--help");
        assertEquals(0, result.status());
        assertAll(result.out().lines().map(each -> () -> assertTrue(each.length() <= 80, each)));
        assertTrue(result.out().contains("--ascii"), result.out());
        assertTrue(line.run("--help").out().contains("\n  " + command), command);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--version", "-V", "-V check"})
    void the_version_is_printed(String arguments) {
        Result result = line.run(arguments.split(" ", -1));
        assertEquals("Buzzout development\n", result.out());
        assertEquals(0, result.status());
    }

    @ParameterizedTest
    @ValueSource(strings = {"-h", "-hV", "--version --help", "--help check", "frobnicate --help", "--bogus -h"})
    void help_of_the_program_is_shown_wherever_it_is_asked_before_a_command(String arguments) {
        Result result = line.run(arguments.split(" ", -1));
        assertEquals(line.run("--help"), result);
        assertEquals("", result.err());
        assertEquals(0, result.status());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "frobnicate | There is no command \"frobnicate\". `buzzout --help` shows what it takes.",
                "chekc x | There is no command \"chekc\"; did you mean check? `buzzout --help` shows what it takes.",
                "frobnicate --json | There is no command \"frobnicate\". `buzzout --help` shows what it takes.",
                "--ascii check x | There is no option --ascii here. `buzzout --help` shows what it takes.",
                "-- check x | A command comes first. `buzzout --help` shows what it takes.",
                "check | PLAN is missing. `buzzout check --help` shows what it takes.",
                "check a b | \"b\" is one word too many. `buzzout check --help` shows what it takes.",
                "check --deep x | There is no option --deep here. `buzzout check --help` shows what it takes.",
                "check --no-colour x | There is no option --no-colour here; did you mean --no-color? `buzzout check --help` shows what it takes.",
                "check -ascii x | There is no option -ascii here; did you mean --ascii? `buzzout check --help` shows what it takes.",
                "check x --quiet --quiet | --quiet is given twice. `buzzout check --help` shows what it takes.",
                "check @quayside.toml | @quayside.toml: there is no such file; `buzzout new 4x12` writes a plan to start from.",
                "draw quayside.toml | --output=FILE is missing. `buzzout draw --help` shows what it takes.",
                "draw quayside.toml -o --force | -o needs a value: -o=FILE. `buzzout draw --help` shows what it takes.",
                "check none.toml | none.toml: there is no such file; `buzzout new 4x12` writes a plan to start from.",
                "check . | .: this is a folder, not a plan.",
                "new 4by12 | \"4by12\" is no size of a board; write rows and columns such as 4x12.",
                "new 40x40 | A board of 40x40 needs 80 pins; 63 is the most, so split the board.",
                "new 4x4 --controller Z80 | Buzzout does not know the controller \"Z80\"; it knows ATmega32U4, ATmega328P, RP2040, ATmega2560.",
                "new 4x4 --controller ATmega32U8 | Buzzout does not know the controller \"ATmega32U8\"; did you mean ATmega32U4? It knows ATmega32U4, ATmega328P, RP2040, ATmega2560.",
                "demo --fault dead:Hyper | Quayside 46 can have no fault \"dead:Hyper\"; `buzzout faults` lists those that it can have.",
                "run quayside.toml --settle fast | --settle: \"fast\" is neither \"auto\" nor a number of microseconds from 1 to 1000. `buzzout run --help` shows what it takes.",
                "run quayside.toml --settle 0 | --settle: \"0\" is neither \"auto\" nor a number of microseconds from 1 to 1000. `buzzout run --help` shows what it takes.",
                "run quayside.toml --settle 1001 | --settle: \"1001\" is neither \"auto\" nor a number of microseconds from 1 to 1000. `buzzout run --help` shows what it takes.",
                "demo --seed x | --seed: \"x\" is not a whole number. `buzzout demo --help` shows what it takes.",
                "netlist quayside.toml --fault x | Quayside 46 can have no fault \"x\"; `buzzout faults quayside.toml` lists those that it can have. PLAN comes before --fault.",
                "netlist --fault dead:Q quayside.toml | PLAN is missing; it comes before --fault. `buzzout netlist --help` shows what it takes.",
                "replay none.jsonl | none.jsonl: there is no such file",
                "replay quayside.toml | quayside.toml:1: the line is not one JSON object; nothing else can be read without the plan in this line",
                "format plan | There is no format \"plan\"; there are `log`, `diagnosis`, `comparison`, `history` and `pins`.",
                "learn none.toml | none.toml: there is no such file; `buzzout new 4x12` writes a plan to start from.",
                "learn none.jsonl | none.jsonl: there is no such file",
                "learn quayside.toml --accept | --accept needs a session log; quayside.toml is a plan.",
                "run none.toml | none.toml: there is no such file; `buzzout new 4x12` writes a plan to start from.",
            })
    void a_wrong_command_line_gets_one_sentence_and_status_2(String arguments, String sentence) {
        Result result = line.run(arguments.split(" ", -1));
        assertEquals(sentence + "\n", result.err());
        assertEquals("", result.out());
        assertEquals(2, result.status());
    }

    @Test
    void escapes_on_the_command_line_do_not_reach_the_terminal() {
        Result result = line.run("check", "\u001b[2J\u202e.toml");
        assertTrue(result.err().startsWith("\\x1B[2J\\u202E.toml: there is no such file"), result.err());
    }

    @Test
    void a_new_plan_passes_the_check() throws IOException {
        Files.writeString(folder.resolve("mine.toml"), line.run("new", "4x12").out());
        Result result = line.run("check", "mine.toml");
        assertEquals(0, result.status(), result.err());
        assertTrue(result.out().contains("48 keys, 4 rows, 12 columns on an ATmega32U4"), result.out());
    }

    @Test
    void a_controller_s_name_may_be_written_small() {
        assertEquals(
                line.run("new", "4x12", "--controller", "RP2040").out(),
                line.run("new", "4x12", "--controller", "rp2040").out());
        assertEquals(0, line.run("new", "4x12", "--controller", "rp2040").status());
    }

    @Test
    void a_plan_with_errors_has_each_named_with_its_place() throws IOException {
        Files.writeString(folder.resolve("bad.toml"), "name = \"Bad\"\ncontroller = \"Z80\"\ncolour = 3\n");
        Result result = line.run("check", "bad.toml");
        assertEquals(2, result.status());
        assertTrue(result.err().lines().count() >= 2, result.err());
        assertTrue(result.err().lines().allMatch(each -> each.matches("bad\\.toml:\\d+:\\d+: .+")), result.err());
    }

    @Test
    void every_fault_listed_is_taken_by_netlist() {
        String[] codes =
                line.run("faults", "quayside.toml", "--quiet").out().lines().toArray(String[]::new);
        assertTrue(codes.length > 700, "faults: " + codes.length);
        for (int at = 0; at < codes.length; at += 37) {
            Result result = line.run("netlist", "quayside.toml", "--fault", codes[at]);
            assertEquals(0, result.status(), codes[at] + result.err());
        }
    }
}
