package buzzout.cli;

import buzzout.line.Flag;
import buzzout.line.Given;
import buzzout.line.Named;
import buzzout.line.Option;
import buzzout.probe.LinkSource;
import buzzout.probe.NamedPort;
import buzzout.probe.ProbeFinder;
import java.util.List;
import java.util.Optional;

/** The options of commands that talk to a probe. */
record ProbeOptions(Optional<String> port, boolean noDtr) {
    private static final Option PORT =
            Option.of("--port", "DEVICE", "The probe's port, a pty too; found by asking unless given.");
    private static final Flag NO_DTR =
            Flag.of("--no-dtr", "Leave the DTR line down, for boards that reset when it rises.");

    static final List<Named> OPTIONS = List.of(PORT, NO_DTR);

    static ProbeOptions of(Given given) {
        return new ProbeOptions(given.value(PORT), given.has(NO_DTR));
    }

    LinkSource source() {
        return port.<LinkSource>map(device -> new NamedPort(device, !noDtr)).orElseGet(() -> new ProbeFinder(!noDtr));
    }
}
