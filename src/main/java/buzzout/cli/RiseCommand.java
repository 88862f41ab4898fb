package buzzout.cli;

import buzzout.plan.Plan;
import buzzout.probe.LinkDown;
import buzzout.probe.RiseMeasurement;
import buzzout.report.RiseText;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "rise",
        description = {
            RiseCommand.IN_SHORT,
            "A net with little wire on it rises sooner, so a lead that is off may show: a hint, not a finding.",
            "Keep your hands off the board meanwhile."
        })
final class RiseCommand implements Callable<Integer> {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Measure how long each pin of a plan takes to rise on its pull-up.";

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(paramLabel = "PLAN", description = "The plan, a TOML file.")
    private String file = "";

    @Mixin
    ProbeOptions probe = new ProbeOptions();

    RiseCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Failure {
        Plan plan = LoadedPlan.from(surroundings, file).plan();
        try {
            RiseMeasurement.Measured measured = RiseMeasurement.of(plan, probe.source());
            boolean ascii = common.look(surroundings.environment()).ascii();
            surroundings.console().say(RiseText.of(plan, measured.nanos(), measured.settleMicros(), ascii));
            return Status.FINE;
        } catch (LinkDown down) {
            throw new Failure(Status.NO_PROBE, down.why());
        }
    }
}
