package buzzout.cli;

import buzzout.probe.LinkSource;
import buzzout.probe.NamedPort;
import buzzout.probe.ProbeFinder;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The options of commands that talk to a probe. */
final class ProbeOptions {
    @Option(
            names = "--port",
            paramLabel = "DEVICE",
            description = "The probe's port, a pty too; found by asking unless given.")
    private Optional<String> port = Optional.empty();

    @Option(names = "--no-dtr", description = "Leave the DTR line down, for boards that reset when it rises.")
    private boolean noDtr;

    LinkSource source() {
        return port.<LinkSource>map(device -> new NamedPort(device, !noDtr)).orElseGet(() -> new ProbeFinder(!noDtr));
    }
}
