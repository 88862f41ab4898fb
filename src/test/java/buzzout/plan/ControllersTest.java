package buzzout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ControllersTest {
    @Test
    void pins_are_as_many_as_the_data_sheets_say() {
        Map<String, Integer> pins = Controllers.ALL.stream()
                .collect(Collectors.toMap(Controller::name, each -> each.pins().size()));
        // 26 found in avr-libc iom32u4.h, 30 in pico-sdk; 20 and 86 from memory.
        assertEquals(Map.of("ATmega32U4", 26, "ATmega328P", 20, "ATmega2560", 86, "RP2040", 30), pins);
    }

    @Test
    void every_note_is_about_a_pin_that_there_is() {
        for (Controller each : Controllers.ALL) {
            assertEquals(each.pins().size(), new HashSet<>(each.pins()).size(), each.name());
            assertTrue(each.pins().containsAll(each.analogue().keySet()), each.name());
            assertTrue(each.pins().containsAll(each.reserved().keySet()), each.name());
            assertTrue(each.pins().containsAll(each.traps().keySet()), each.name());
            assertEquals(each.analogue().size(), new HashSet<>(each.analogue().values()).size(), each.name());
        }
    }

    @Test
    void levels_are_in_order() {
        for (Controller each : Controllers.ALL) {
            assertTrue(0 < each.lowVolts(), each.name());
            assertTrue(each.lowVolts() < each.highVolts(), each.name());
            assertTrue(each.highVolts() < each.supplyVolts(), each.name());
            assertTrue(each.pullUpOhms().strongest() < each.pullUpOhms().weakest(), each.name());
        }
    }

    @Test
    void one_diode_is_always_a_sure_low_and_only_the_higher_threshold_takes_two() {
        assertEquals(1, Controllers.ATMEGA32U4.sureDiodes());
        assertEquals(2, Controllers.ATMEGA328P.sureDiodes());
        assertEquals(2, Controllers.ATMEGA2560.sureDiodes());
        assertEquals(1, Controllers.RP2040.sureDiodes());
    }

    @Test
    void analogue_channels_follow_the_core() {
        // ArduinoCore-avr leonardo/pins_arduino.h (found).
        assertEquals(OptionalInt.of(13), Controllers.ATMEGA32U4.analogueChannel("B6"));
        assertEquals(OptionalInt.empty(), Controllers.ATMEGA32U4.analogueChannel("D5"));
        assertEquals(OptionalInt.of(0), Controllers.RP2040.analogueChannel("GPIO26"));
    }
}
