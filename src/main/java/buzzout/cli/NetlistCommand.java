package buzzout.cli;

import buzzout.circuit.Netlist;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "netlist", description = NetlistCommand.IN_SHORT)
final class NetlistCommand implements Callable<Integer> {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Print the wiring of a plan's board with the given faults, for the sketch's bench.";

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(paramLabel = "PLAN", description = "The plan, a TOML file.")
    private String file = "";

    @Option(
            names = "--fault",
            paramLabel = "CODE",
            arity = "1..*",
            description = "Faults, as `faults PLAN` lists them.")
    private List<String> codes = new ArrayList<>();

    NetlistCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Failure {
        LoadedPlan loaded = LoadedPlan.from(surroundings, file);
        surroundings.console().say(Netlist.text(loaded.plan(), loaded.faults(codes)));
        return Status.FINE;
    }
}
