package buzzout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlanReaderTest {
    @Test
    void what_a_plan_does_not_say_has_a_default() {
        Plan plan = SmallPlan.planWith("", "");
        assertEquals("T", plan.name());
        assertEquals(Controllers.ATMEGA32U4, plan.controller());
        assertEquals(NetKind.ROW, plan.stripe());
        assertEquals(NetKind.ROW, plan.diodes());
        assertEquals(Optional.empty(), plan.sparePin());
        assertEquals(10, plan.bounceLimitMillis());
        assertEquals(
                List.of(
                        new Key(0, "A", 0, 2, new Place(0, 0, 1)),
                        new Key(1, "B", 0, 3, new Place(1, 0, 1)),
                        new Key(2, "C", 1, 2, new Place(0, 1, 1)),
                        new Key(3, "D", 1, 3, new Place(1, 1, 1))),
                plan.keys());
        assertEquals(
                new Net("R2", NetKind.ROW, "D1", List.of(2, 3), List.of(new Link(0, 1, false)), 0, Optional.empty()),
                plan.nets().get(1));
    }

    @Test
    void what_a_plan_says_is_kept() {
        Plan plan = SmallPlan.planWith(
                "[rows]", "stripe = \"column\"\ndiodes = \"columns\"\nspare = \"B7\"\nbounce_limit_ms = 7.5\n[rows]");
        assertEquals(NetKind.COLUMN, plan.stripe());
        assertEquals(NetKind.COLUMN, plan.diodes());
        assertEquals(Optional.of("B7"), plan.sparePin());
        assertEquals(7.5, plan.bounceLimitMillis());
        assertEquals(List.of("D0", "D1", "D2", "D3", "B7"), plan.pins());
    }

    @Test
    void a_net_says_its_colour_lead_jumpers_and_branches() {
        Plan plan = PlanReader.read("""
                        name = "T"
                        controller = "RP2040"
                        [rows]
                        R1 = { pin = "GPIO0", keys = "A B C", lead = "B", colour = "light blue", branches = ["B D E", "D F"], jumpers = ["D B", "B C"] }
                        [columns]
                        C1 = { pin = "GPIO1", keys = "A" }
                        C2 = { pin = "GPIO2", keys = "B" }
                        C3 = { pin = "GPIO3", keys = "C" }
                        C4 = { pin = "GPIO4", keys = "D" }
                        C5 = { pin = "GPIO5", keys = "E" }
                        C6 = { pin = "GPIO6", keys = "F" }
                        """, "t.toml").plan().orElseThrow();
        Net row = plan.nets().get(0);
        assertEquals(List.of(0, 1, 2, 3, 4, 5), row.joints());
        assertEquals(
                List.of(
                        new Link(0, 1, false),
                        new Link(1, 2, true),
                        new Link(1, 3, true),
                        new Link(3, 4, false),
                        new Link(3, 5, false)),
                row.links());
        assertEquals(1, row.leadJoint());
        assertEquals(Optional.of("light blue"), row.colour());
    }

    @Test
    void nets_keep_the_order_of_the_file_and_not_of_their_names() {
        Plan plan = SmallPlan.planWith("R1 = {", "Z = {");
        assertEquals(
                List.of("Z", "R2", "C1", "C2"),
                plan.nets().stream().map(Net::name).toList());
    }

    @Test
    void widths_and_gaps_move_what_lies_to_the_right() {
        Plan plan = SmallPlan.planWith(
                "D3\", keys = \"B D\" }",
                "D3\", keys = \"B D\" }\n[layout]\nlines = [\"B A\", \"\", \"C D\"]\nwidths = { B = 1.5 }\ngaps = { A = 0.5, C = 0.25 }");
        assertEquals(
                List.of(
                        new Key(0, "B", 0, 3, new Place(0, 0, 1.5)),
                        new Key(1, "A", 0, 2, new Place(2, 0, 1)),
                        new Key(2, "C", 1, 2, new Place(0.25, 2, 1)),
                        new Key(3, "D", 1, 3, new Place(1.25, 2, 1))),
                plan.keys());
        // The row is still soldered from A to B.
        assertEquals(List.of(1, 0), plan.nets().get(0).joints());
    }

    @Test
    void keys_may_be_listed_in_lines_or_in_pieces() {
        assertEquals(4, SmallPlan.planWith("\"A B\"", "[\"A\", \"B\"]").keys().size());
        assertEquals(
                4,
                SmallPlan.planWith("\"A B\"", "\"\"\"\n  A\n\tB\n\"\"\"").keys().size());
        assertEquals(4, SmallPlan.planWith("\"A B\"", "\"A\\tB\"").keys().size());
    }

    @Test
    void a_key_may_be_called_by_any_mark() {
        Plan plan = PlanReader.read("""
                        name = "T"
                        controller = "RP2040"
                        [rows]
                        R1 = { pin = "GPIO0", keys = ["\\"", '\\', "'", "#", "=", "é", "\ud83d\ude80", ":"] }
                        [columns]
                        C1 = { pin = "GPIO1", keys = "\\"" }
                        C2 = { pin = "GPIO2", keys = '\\' }
                        C3 = { pin = "GPIO3", keys = "'" }
                        C4 = { pin = "GPIO4", keys = "#" }
                        C5 = { pin = "GPIO5", keys = "=" }
                        C6 = { pin = "GPIO6", keys = "\\u00e9" }
                        C7 = { pin = "GPIO7", keys = "\\U0001F680" }
                        C8 = { pin = "GPIO8", keys = ":" }
                        """, "t.toml").plan().orElseThrow();
        assertEquals(
                "\" \\ ' # = é \ud83d\ude80 :",
                plan.keys().stream().map(Key::name).collect(Collectors.joining(" ")));
    }

    @Test
    void a_word_is_found_behind_escapes_and_wide_characters() {
        assertEquals(
                List.of("t.toml:4:48: key \"Q\" is on R1 but on no column; add it to one"),
                SmallPlan.said(SmallPlan.with("\"A B\"", "\"\\u0041 \\U00000042\\t Q\"")));
        assertEquals(
                List.of(
                        "t.toml:4:30: key \"\ud83d\ude80\" is on R1 but on no column; add it to one",
                        "t.toml:4:32: key \"Q\" is on R1 but on no column; add it to one"),
                SmallPlan.said(SmallPlan.with("\"A B\"", "'A \ud83d\ude80 Q B'")));
    }

    @Test
    void a_word_in_a_text_of_several_lines_is_told_at_its_place() {
        assertEquals(
                List.of("t.toml:5:2: key \"Q\" is on R1 but on no column; add it to one"),
                SmallPlan.said(SmallPlan.with("\"A B\"", "\"\"\"A B\n Q\"\"\"")));
    }

    @Test
    void line_ends_of_either_kind_and_a_byte_order_mark_will_do() {
        PlanFile file = PlanReader.read("\ufeff" + SmallPlan.TEXT.replace("\n", "\r\n"), "t.toml");
        assertEquals(List.of(), file.problems());
        assertTrue(file.plan().isPresent());
    }

    @Test
    void a_note_does_not_stand_in_the_way() {
        PlanFile file = SmallPlan.with("\"D0\"", "\"E2\"");
        assertTrue(file.plan().isPresent());
        assertEquals(
                List.of("t.toml:4:14: note: pin E2 of R1 is often strapped to ground or to the supply"),
                SmallPlan.said(file));
    }

    @Test
    void more_nets_than_a_sweep_can_hold_are_refused() {
        String columns = IntStream.rangeClosed(1, 63)
                .mapToObj(i -> "C" + i + " = { pin = \"P" + i + "\", keys = \"K" + i + "\" }\n")
                .collect(Collectors.joining());
        String keys = IntStream.rangeClosed(1, 63).mapToObj(i -> "K" + i).collect(Collectors.joining(" "));
        PlanFile file = PlanReader.read(
                "name = \"T\"\n[rows]\nR1 = { pin = \"A0\", keys = \"" + keys + "\" }\n[columns]\n" + columns,
                "t.toml");
        assertEquals(
                List.of(
                        "t.toml:1:1: the plan has no controller; add one of ATmega32U4, ATmega328P, RP2040, ATmega2560",
                        "t.toml:67:1: the plan has 64 rows and columns; 63 is the most, so split the board"),
                SmallPlan.said(file));
    }
}
