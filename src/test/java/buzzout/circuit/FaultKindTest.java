package buzzout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** No kind of fault is without its texts, its change to the circuit and its place in the catalogue. */
class FaultKindTest {
    private static final Plan PLAN = ExamplePlan.quayside();

    @ParameterizedTest
    @EnumSource
    void has_faults_that_say_what_they_are_and_what_to_do(FaultKind kind) {
        List<Fault> faults = kind.all(PLAN);
        assertFalse(faults.isEmpty());
        for (Fault fault : faults) {
            assertEquals(kind, fault.kind());
            assertTrue(fault.code(PLAN).matches(kind.code() + "(:[^\\s:]+)*"), fault.code(PLAN));
            assertFalse(fault.says(PLAN).isBlank());
            assertTrue(fault.repair(PLAN).endsWith("."), fault.repair(PLAN));
            assertTrue(fault.meter(PLAN).length() > 20, fault.meter(PLAN));
            assertFalse(fault.parts().isEmpty());
            assertFalse(fault.nets(PLAN).isEmpty());
        }
        assertEquals(
                faults.size(),
                faults.stream().map(fault -> fault.repair(PLAN)).distinct().count());
    }

    @ParameterizedTest
    @EnumSource
    void changes_what_conducts(FaultKind kind) {
        for (Fault fault : kind.all(PLAN)) {
            assertNotEquals(readings(List.of()), readings(List.of(fault)), fault.code(PLAN));
            assertNotEquals(Netlist.text(PLAN, List.of()), Netlist.text(PLAN, List.of(fault)), fault.code(PLAN));
        }
    }

    @Test
    void parts_have_one_number_each() {
        Set<Part> parts = Catalogue.of(PLAN).stream()
                .flatMap(fault -> fault.parts().stream())
                .collect(Collectors.toSet());
        assertEquals(
                parts.size(), parts.stream().mapToLong(Part::number).distinct().count());
    }

    @Test
    void codes_and_sentences_name_one_fault_each_and_codes_are_found_again() {
        List<Fault> all = Catalogue.of(PLAN);
        assertEquals(
                all.size(),
                all.stream().map(fault -> fault.code(PLAN)).distinct().count());
        assertEquals(
                all.size(),
                all.stream().map(fault -> fault.says(PLAN)).distinct().count());
        for (Fault fault : all) {
            assertEquals(Optional.of(fault), Catalogue.find(PLAN, fault.code(PLAN)));
        }
    }

    @Test
    void joints_are_numbered_in_solder_order_and_repairs_name_them() {
        assertEquals("R3.8 and R3.9", Part.numbers(PLAN, fault("open:R3:M:,").parts()));
        assertEquals("R1.10 and C10.1", Part.numbers(PLAN, fault("dead:O").parts()));
        assertEquals(
                "C6.2 and C7.2", Part.numbers(PLAN, fault("bridge:C6:C7:G:H").parts()));
        assertEquals("", Part.numbers(PLAN, fault("mirrored").parts()));
        assertEquals(
                "Reheat the lead of C4 at the E joint (C4.1, first joint from the top, solder side) and at controller"
                        + " pin D6.",
                fault("lead-off:C4").repair(PLAN));
        assertTrue(fault("reversed:O").repair(PLAN).contains("the diode of O at R1.10 and turn it"));
    }

    private static Fault fault(String code) {
        return Catalogue.find(PLAN, code).orElseThrow(() -> new AssertionError(code));
    }

    @Test
    void every_class_of_fault_is_in_the_catalogue() {
        Set<Class<?>> families = new HashSet<>(List.of(Fault.class.getPermittedSubclasses()));
        assertEquals(families, Catalogue.of(PLAN).stream().map(Object::getClass).collect(Collectors.toSet()));
    }

    private static List<Reading> readings(List<Fault> faults) {
        Circuit circuit = Circuit.of(PLAN, faults);
        List<Reading> readings = new ArrayList<>(List.of(circuit.quiet()));
        for (Key key : PLAN.keys()) {
            readings.add(circuit.pressed(key));
        }
        return readings;
    }
}
