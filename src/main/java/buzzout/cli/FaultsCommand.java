package buzzout.cli;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.Part;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "faults", description = FaultsCommand.IN_SHORT)
final class FaultsCommand implements Callable<Integer> {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "List every fault that a plan's board can have: the code that --fault takes and reports use, and"
                    + " what it means.";

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(paramLabel = "PLAN", arity = "0..1", description = "The plan, a TOML file; the demo's unless given.")
    private Optional<String> file = Optional.empty();

    FaultsCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Failure {
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
            surroundings.console().say(common.quiet ? code : code + " ".repeat(widest + 2 - code.length()) + says);
        }
        return Status.FINE;
    }
}
