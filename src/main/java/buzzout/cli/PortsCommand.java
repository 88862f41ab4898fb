package buzzout.cli;

import buzzout.probe.NothingAnswers;
import buzzout.probe.Port;
import buzzout.probe.SerialPorts;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

@Command(name = "ports", description = PortsCommand.IN_SHORT)
final class PortsCommand implements Callable<Integer> {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "List the serial ports that a probe may be on. `run` asks those with a USB identity by itself.";

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    PortsCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        List<Port> ports = SerialPorts.list();
        int widest = ports.stream().mapToInt(port -> port.path().length()).max().orElse(0);
        for (Port port : ports) {
            String usb = port.usb().map(Port.Usb::id).orElse("no USB  ");
            surroundings
                    .console()
                    .say(port.path() + " ".repeat(widest + 2 - port.path().length()) + usb + "  " + port.description());
        }
        if (ports.isEmpty() && !common.quiet) {
            surroundings.console().say("There is no serial port.");
            NothingAnswers.whatToTry(ports).forEach(surroundings.console()::say);
        }
        return Status.FINE;
    }
}
