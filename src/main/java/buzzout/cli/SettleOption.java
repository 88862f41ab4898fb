package buzzout.cli;

import buzzout.line.Given;
import buzzout.line.Option;
import buzzout.probe.SettleTime;
import java.util.Optional;

/** The option of commands that sweep. */
final class SettleOption {
    static final Option SETTLE = Option.of(
            "--settle",
            "auto|MICROS",
            "How long the probe waits before each reading: a number of microseconds, 15 unless given; or auto, for"
                    + " twice what its slowest pin takes to rise, measured at the start.");

    private SettleOption() {}

    static SettleTime time(Given given) throws Misuse {
        Optional<String> text = given.value(SETTLE);
        if (text.isEmpty()) {
            return SettleTime.USUAL;
        }
        return SettleTime.parse(text.get())
                .orElseThrow(() -> Misuse.of(
                        SETTLE,
                        "\"" + text.get() + "\" is neither \"auto\" nor a number of microseconds from 1 to 1000"));
    }
}
