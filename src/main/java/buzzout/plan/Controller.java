package buzzout.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A microcontroller as a probe: what its pins are called and how they read.
 *
 * @param pins general-purpose pins by their data-sheet names
 * @param analogue channel of each analogue pin
 * @param reserved pins that cannot be probed while the sketch talks, each with the reason
 * @param traps pins that often disappoint, each with the reason
 * @param supplyVolts supply
 * @param lowVolts a pin surely reads low up to this (VIL max)
 * @param highVolts a pin surely reads high from this (VIH min)
 * @param pullUpOhms the weakest and the strongest internal pull-up, largest first
 */
public record Controller(
        String name,
        List<String> pins,
        Map<String, Integer> analogue,
        Map<String, String> reserved,
        Map<String, String> traps,
        double supplyVolts,
        double lowVolts,
        double highVolts,
        PullUp pullUpOhms) {
    /** A range of internal pull-up resistance in ohms. */
    public record PullUp(double weakest, double strongest) {}

    /** The most that one 1N4148 drops behind a pull-up, 0 to 50 °C (computed with ngspice from public models). */
    private static final double DIODE_DROP_VOLTS = 0.60;

    public Controller {
        pins = List.copyOf(pins);
        analogue = Map.copyOf(analogue);
        reserved = Map.copyOf(reserved);
        traps = Map.copyOf(traps);
    }

    /** How many diodes in series still read as a sure low; one more may read either way. */
    public int sureDiodes() {
        return (int) (lowVolts / DIODE_DROP_VOLTS);
    }

    public OptionalInt analogueChannel(String pin) {
        Integer channel = analogue.get(pin);
        return channel == null ? OptionalInt.empty() : OptionalInt.of(channel);
    }

    public Optional<String> trap(String pin) {
        return Optional.ofNullable(traps.get(pin));
    }

    public Optional<String> reserved(String pin) {
        return Optional.ofNullable(reserved.get(pin));
    }
}
