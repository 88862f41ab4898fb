package buzzout.cli;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.Part;
import buzzout.line.Given;
import buzzout.line.Operand;
import buzzout.line.Usage;
import java.util.List;
import java.util.Optional;

final class FaultsCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "List every fault that a plan's board can have: the code that --fault takes and reports use, and"
                    + " what it means.";

    private static final Operand PLAN = Operand.optional("PLAN", "The plan, a TOML file; the demo's unless given.");

    static final Usage USAGE = Usage.of("buzzout faults", IN_SHORT).taking(PLAN).with(Common.OPTIONS);

    private final Surroundings surroundings;
    private final Common common;
    private final Optional<String> file;

    FaultsCommand(Surroundings surroundings, Given given) {
        this.surroundings = surroundings;
        common = Common.of(given);
        file = given.optional(PLAN);
    }

    @Override
    public int run() throws Failure {
        LoadedPlan loaded = file.isPresent() ? LoadedPlan.from(surroundings, file.get()) : LoadedPlan.quayside();
        List<Fault> faults = Catalogue.of(loaded.plan());
        int widest = faults.stream()
                .mapToInt(fault -> fault.code(loaded.plan()).length())
                .max()
                .orElse(0);
        for (Fault fault : faults) {
            String code = fault.code(loaded.plan());
            String joints = Part.numbers(loaded.plan(), fault.parts());
            String says = fault.says(loaded.plan()) + (joints.isEmpty() ? "" : " (" + joints + ")");
            surroundings.console().say(common.quiet() ? code : code + " ".repeat(widest + 2 - code.length()) + says);
        }
        return Status.FINE;
    }
}
