package buzzout.cli;

import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.plan.PlanFile;
import buzzout.plan.PlanReader;
import buzzout.plan.Problem;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "check", description = CheckCommand.IN_SHORT)
final class CheckCommand implements Callable<Integer> {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Check a plan; name all its problems with their places and what to do about each.";

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(paramLabel = "PLAN", description = "The plan, a TOML file.")
    private String file = "";

    CheckCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Failure {
        PlanFile read = PlanReader.read(LoadedPlan.text(surroundings, file), file);
        for (Problem problem : read.problems()) {
            if (problem.severity() == Problem.Severity.ERROR) {
                surroundings.console().complain(problem.toString());
            } else if (!common.quiet) {
                surroundings.console().say(problem.toString());
            }
        }
        read.plan()
                .filter(plan -> !common.quiet)
                .ifPresent(plan -> surroundings.console().say(summary(plan)));
        return read.plan().isPresent() ? Status.FINE : Status.USAGE;
    }

    private String summary(Plan plan) {
        return file + ": " + plan.name() + " can be built: " + plan.keys().size() + " keys, "
                + plan.nets(NetKind.ROW).size() + " rows, "
                + plan.nets(NetKind.COLUMN).size() + " columns on an "
                + plan.controller().name() + ".";
    }
}
