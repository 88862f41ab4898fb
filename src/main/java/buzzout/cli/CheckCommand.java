package buzzout.cli;

import buzzout.line.Given;
import buzzout.line.Usage;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.plan.PlanFile;
import buzzout.plan.PlanReader;
import buzzout.plan.Problem;

final class CheckCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Check a plan; name all its problems with their places and what to do about each.";

    static final Usage USAGE =
            Usage.of("buzzout check", IN_SHORT).taking(LoadedPlan.PLAN).with(Common.OPTIONS);

    private final Surroundings surroundings;
    private final Common common;
    private final String file;

    CheckCommand(Surroundings surroundings, Given given) {
        this.surroundings = surroundings;
        common = Common.of(given);
        file = given.word(LoadedPlan.PLAN);
    }

    @Override
    public int run() throws Failure {
        PlanFile read = PlanReader.read(LoadedPlan.text(surroundings, file), file);
        for (Problem problem : read.problems()) {
            if (problem.severity() == Problem.Severity.ERROR) {
                surroundings.console().complain(problem.toString());
            } else if (!common.quiet()) {
                surroundings.console().say(problem.toString());
            }
        }
        read.plan()
                .filter(plan -> !common.quiet())
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
