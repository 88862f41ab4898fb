package buzzout.cli;

import buzzout.circuit.Netlist;
import buzzout.line.Given;
import buzzout.line.Option;
import buzzout.line.Usage;
import java.util.List;

final class NetlistCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Print the wiring of a plan's board with the given faults, for the sketch's bench.";

    private static final Option CODES = Option.many("--fault", "CODE", "Faults, as `faults PLAN` lists them.");

    static final Usage USAGE = Usage.of("buzzout netlist", IN_SHORT)
            .taking(LoadedPlan.PLAN)
            .with(Common.OPTIONS)
            .with(CODES);

    private final Surroundings surroundings;
    private final String file;
    private final List<String> codes;

    NetlistCommand(Surroundings surroundings, Given given) {
        this.surroundings = surroundings;
        file = given.word(LoadedPlan.PLAN);
        codes = given.values(CODES);
    }

    @Override
    public int run() throws Failure {
        LoadedPlan loaded = LoadedPlan.from(surroundings, file);
        surroundings.console().say(Netlist.text(loaded.plan(), loaded.faults(codes)));
        return Status.FINE;
    }
}
