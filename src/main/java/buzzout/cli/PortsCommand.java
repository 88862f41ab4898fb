package buzzout.cli;

import buzzout.line.Given;
import buzzout.line.Usage;
import buzzout.probe.NothingAnswers;
import buzzout.probe.Port;
import buzzout.probe.SerialPorts;
import java.util.List;

final class PortsCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "List the serial ports that a probe may be on. `run` asks those with a USB identity by itself.";

    static final Usage USAGE = Usage.of("buzzout ports", IN_SHORT).with(Common.OPTIONS);

    private final Surroundings surroundings;
    private final Common common;

    PortsCommand(Surroundings surroundings, Given given) {
        this.surroundings = surroundings;
        common = Common.of(given);
    }

    @Override
    public int run() {
        List<Port> ports = SerialPorts.list();
        int widest = ports.stream().mapToInt(port -> port.path().length()).max().orElse(0);
        for (Port port : ports) {
            String usb = port.usb().map(Port.Usb::id).orElse("no USB  ");
            surroundings
                    .console()
                    .say(port.path() + " ".repeat(widest + 2 - port.path().length()) + usb + "  " + port.description());
        }
        if (ports.isEmpty() && !common.quiet()) {
            surroundings.console().say("There is no serial port.");
            NothingAnswers.whatToTry(ports).forEach(surroundings.console()::say);
        }
        return Status.FINE;
    }
}
