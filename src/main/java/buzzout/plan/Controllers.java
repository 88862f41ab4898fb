package buzzout.plan;

import buzzout.plan.Controller.PullUp;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The microcontrollers that can be a probe.
 *
 * <p>Beside each number stands where it comes from: <i>found</i> in the source named, or from <i>memory</i>. A
 * reason completes a sentence that begins with the pin.
 */
public final class Controllers {
    private static final String JTAG =
            "is a JTAG pin until that is turned off: the sketch does it, and the firmware that comes next must too";
    private static final String LED = "has a LED on many boards, which keeps a pull-up from raising it";
    private static final String SERIAL = "carries the serial line to the host";
    private static final String NOT_OUT = "is not brought out on the usual board";

    /** At 5 V. */
    public static final Controller ATMEGA32U4 = new Controller(
            "ATmega32U4",
            pins("B0-7 C6-7 D0-7 E2 E6 F0-1 F4-7"), // found, avr-libc iom32u4.h
            // Found, ArduinoCore-avr leonardo/pins_arduino.h.
            channels("F0=0 F1=1 F4=4 F5=5 F6=6 F7=7 D4=8 D6=9 D7=10 B4=11 B5=12 B6=13"),
            Map.of(),
            notes(Map.of(
                    "F4-7", JTAG, // found, data sheet p. 371
                    "E2", "is often strapped to ground or to the supply", // memory
                    "B0 C7 D5", LED)), // memory
            5.0,
            0.9, // 0.2 VCC - 0.1; found second-hand, data sheet table 29-1
            1.9, // 0.2 VCC + 0.9; the same
            new PullUp(50e3, 20e3)); // memory; found for its siblings, 7799D p. 264

    /** At 5 V. */
    public static final Controller ATMEGA328P = new Controller(
            "ATmega328P",
            pins("B0-5 C0-5 D0-7"), // memory
            channels("C0=0 C1=1 C2=2 C3=3 C4=4 C5=5"), // memory
            notes(Map.of("D0-1", SERIAL)), // memory
            notes(Map.of("B5", LED)), // memory
            5.0,
            1.5, // 0.3 VCC; found, 7810C p. 305
            3.0, // 0.6 VCC; the same
            new PullUp(50e3, 20e3)); // found, 8271H p. 301

    /** At 5 V. All of it from memory of its data sheet and of the usual board. */
    public static final Controller ATMEGA2560 = new Controller(
            "ATmega2560",
            pins("A0-7 B0-7 C0-7 D0-7 E0-7 F0-7 G0-5 H0-7 J0-7 K0-7 L0-7"),
            channels("F0=0 F1=1 F2=2 F3=3 F4=4 F5=5 F6=6 F7=7" + " K0=8 K1=9 K2=10 K3=11 K4=12 K5=13 K6=14 K7=15"),
            notes(Map.of("E0-1", SERIAL)),
            notes(Map.of("F4-7", JTAG, "B7", LED, "D4-6 E2 E6-7 G3-4 H2 H7 J2-7", NOT_OUT)),
            5.0,
            1.5, // 0.3 VCC
            3.0, // 0.6 VCC
            new PullUp(50e3, 20e3));

    /** At 3.3 V. */
    public static final Controller RP2040 = new Controller(
            "RP2040",
            pins("GPIO0-29"), // found, pico-sdk
            channels("GPIO26=0 GPIO27=1 GPIO28=2 GPIO29=3"), // found, pico-sdk
            Map.of(),
            notes(Map.of("GPIO23-25 GPIO29", NOT_OUT)), // memory
            3.3,
            0.8, // found, data sheet p. 634
            2.0, // memory
            new PullUp(80e3, 50e3)); // found, data sheet p. 634

    /** All of them, the one with the most pins last. */
    public static final List<Controller> ALL = List.of(ATMEGA32U4, ATMEGA328P, RP2040, ATMEGA2560);

    private Controllers() {}

    /** The controller of a name, in capitals or not. */
    public static Optional<Controller> named(String name) {
        for (Controller each : ALL) {
            if (each.name().equalsIgnoreCase(name)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /** The name of a controller that was probably meant. */
    public static Optional<String> nearest(String name) {
        return Nearest.to(name, names());
    }

    static List<String> names() {
        return ALL.stream().map(Controller::name).toList();
    }

    /** Reads ranges such as {@code B0-7 C6}. */
    private static List<String> pins(String ranges) {
        List<String> pins = new ArrayList<>();
        for (String range : ranges.split(" ", -1)) {
            int digits = 0;
            while (!Character.isDigit(range.charAt(digits))) {
                digits++;
            }
            String port = range.substring(0, digits);
            String[] ends = range.substring(digits).split("-", -1);
            int last = Integer.parseInt(ends[ends.length - 1]);
            for (int number = Integer.parseInt(ends[0]); number <= last; number++) {
                pins.add(port + number);
            }
        }
        return pins;
    }

    private static Map<String, String> notes(Map<String, String> byRanges) {
        Map<String, String> notes = new LinkedHashMap<>();
        byRanges.forEach((ranges, note) -> pins(ranges).forEach(pin -> notes.put(pin, note)));
        return notes;
    }

    private static Map<String, Integer> channels(String pairs) {
        Map<String, Integer> channels = new HashMap<>();
        for (String pair : pairs.split(" ", -1)) {
            String[] sides = pair.split("=", -1);
            channels.put(sides[0], Integer.valueOf(sides[1]));
        }
        return channels;
    }
}
