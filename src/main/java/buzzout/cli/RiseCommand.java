package buzzout.cli;

import buzzout.line.Given;
import buzzout.line.Usage;
import buzzout.plan.Plan;
import buzzout.probe.LinkDown;
import buzzout.probe.RiseMeasurement;
import buzzout.report.RiseText;

final class RiseCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Measure how long each pin of a plan takes to rise on its pull-up.";

    static final Usage USAGE = Usage.of(
                    "buzzout rise",
                    IN_SHORT,
                    "A net with little wire on it rises sooner, so a lead that is off may show: a hint, not a finding.",
                    "Keep your hands off the board meanwhile.")
            .taking(LoadedPlan.PLAN)
            .with(Common.OPTIONS)
            .with(ProbeOptions.OPTIONS);

    private final Surroundings surroundings;
    private final Common common;
    private final String file;
    private final ProbeOptions probe;

    RiseCommand(Surroundings surroundings, Given given) {
        this.surroundings = surroundings;
        common = Common.of(given);
        file = given.word(LoadedPlan.PLAN);
        probe = ProbeOptions.of(given);
    }

    @Override
    public int run() throws Failure {
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
