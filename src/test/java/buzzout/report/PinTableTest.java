package buzzout.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.e2e.Needs;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.plan.PlanReader;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PinTableTest {
    /** Names that would break out of a table, a string or a comment, if they could. */
    private static final Plan HOSTILE =
            PlanReader.read("""
                    name = '7 */ "??/ Ä'
                    controller = "RP2040"
                    stripe = "column"
                    [rows]
                    'R"\\' = { pin = "GPIO12", keys = ['", ??= \\0 Ä9'] }
                    [columns]
                    C1 = { pin = "GPIO1", keys = ['",'] }
                    C2 = { pin = "GPIO2", keys = '??=' }
                    C3 = { pin = "GPIO3", keys = '\\0' }
                    C4 = { pin = "GPIO4", keys = 'Ä9' }
                    """, "hostile.toml").plan().orElseThrow();

    @TempDir
    Path folder;

    @Test
    void the_table_of_the_example_in_csv() {
        List<String> lines =
                PinTableCsv.of(table(ExamplePlan.quayside())).lines().toList();
        assertEquals(47, lines.size());
        assertEquals("Esc,0,0,R1,C1,D0,F0,29,D00,0.0,0.0,1.0,untested", lines.get(1));
        assertEquals("\",\",2,8,R3,C9,D2,C6,36,B08,8.0,2.0,1.0,untested", lines.get(33));
        assertEquals("Space,3,5,R4,C6,D3,B4,2C,A04,4.0,3.0,2.0,untested", lines.get(41));
        assertEquals("Log,3,1,R4,C2,D3,F1,,A01,1.0,3.0,1.0,untested", lines.get(38));
    }

    @Test
    void json_says_the_same_and_that_nothing_is_proven() {
        JsonObject document = JsonParser.parseString(PinTableJson.of(table(ExamplePlan.quayside())))
                .getAsJsonObject();
        assertEquals("buzzout-pins", document.get("format").getAsString());
        assertEquals("row", document.get("stripe").getAsString());
        assertTrue(document.get("proof").isJsonNull());
        assertEquals(4, document.getAsJsonArray("rows").size());
        JsonObject brown = document.getAsJsonArray("columns").get(0).getAsJsonObject();
        assertEquals("{\"net\":\"C1\",\"pin\":\"F0\",\"colour\":\"brown\",\"proven\":false}", brown.toString());
        JsonObject comma = document.getAsJsonArray("keys").get(32).getAsJsonObject();
        assertEquals(
                "{\"key\":\",\",\"row\":2,\"column\":8,\"usage\":\"36\",\"place\":\"B08\",\"x\":8.0,\"y\":2.0,"
                        + "\"width\":1.0,\"state\":\"untested\"}",
                comma.toString());
    }

    @Test
    void the_format_page_lists_every_field() throws IOException {
        String page =
                new String(PinTable.class.getResourceAsStream("PIN-TABLE.md").readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(page.contains(
                "    " + PinTableCsv.of(table(HOSTILE)).lines().findFirst().orElseThrow() + "\n"));
        JsonObject document = JsonParser.parseString(PinTableJson.of(table(ExamplePlan.quayside())))
                .getAsJsonObject();
        document.keySet().forEach(field -> assertTrue(page.contains('`' + field + '`'), field));
        document.getAsJsonArray("keys")
                .get(0)
                .getAsJsonObject()
                .keySet()
                .forEach(field -> assertTrue(page.contains('`' + field + '`'), field));
    }

    @Test
    void the_header_compiles_without_a_warning_and_holds_what_it_should() throws IOException, InterruptedException {
        Needs.gcc();
        Files.writeString(folder.resolve("quayside.h"), PinTableC.of(table(ExamplePlan.quayside())));
        Files.writeString(folder.resolve("hostile.h"), PinTableC.of(table(HOSTILE)));
        Files.writeString(folder.resolve("main.c"), """
                #include "quayside.h"
                #include "quayside.h"
                #include "hostile.h"
                #include <stdio.h>
                int main(void) {
                    int i;
                    for (i = 0; i < BOARD_7_ROWS; i++)
                        printf("%s %s %d\\n", board_7_rows[i].net, board_7_rows[i].port, board_7_rows[i].number);
                    for (i = 0; i < BOARD_7_COLUMNS; i++)
                        printf("%s%d ", board_7_columns[i].port, board_7_columns[i].number);
                    for (i = 0; i < BOARD_7_KEYS; i++)
                        printf("%s ", board_7_keys[i].name);
                    printf("\\n%s %d\\n", board_7_name, BOARD_7_STRIPE_FACES_ROW);
                    printf("%s %s%d %s %02X %s\\n", quayside_46_name, quayside_46_rows[3].port,
                        quayside_46_rows[3].number, quayside_46_keys[45].name, quayside_46_keys[45].usage,
                        quayside_46_keys[45].place);
                    return quayside_46_columns[11].proven;
                }
                """);
        assertEquals("", said("gcc", "-std=c99", "-pedantic", "-Wall", "-Wextra", "-Werror", "main.c", "-o", "main"));
        assertEquals("""
                R"\\ GPIO 12
                GPIO1 GPIO2 GPIO3 GPIO4 ", ??= \\0 Ä9\s
                7 */ "??/ Ä 0
                Quayside 46 D3 Right 4F A11
                """, said("./main"));
        assertEquals("", said("gcc", "-x", "c++", "-Wall", "-Wextra", "-Werror", "-fsyntax-only", "main.c"));
    }

    @Test
    void names_break_out_of_nothing() {
        String header = PinTableC.of(table(HOSTILE));
        assertFalse(header.contains("??"), header);
        assertTrue(PinTableCsv.of(table(HOSTILE)).contains("\r\n\"\"\",\",0,0,\"R\"\"\\\",C1,"));
    }

    private static PinTable table(Plan plan) {
        return PinTable.of(plan, Optional.empty());
    }

    private String said(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        return said;
    }
}
