package buzzout.cli;

import buzzout.probe.SettleTime;
import picocli.CommandLine.Option;

/** The option of commands that sweep. */
final class SettleOption {
    @Option(
            names = "--settle",
            paramLabel = "auto|MICROS",
            description = "How long the probe waits before each reading: a number of microseconds, 15 unless given; or"
                    + " auto, for twice what its slowest pin takes to rise, measured at the start.")
    private SettleTime time = SettleTime.USUAL;

    SettleTime time() {
        return time;
    }
}
