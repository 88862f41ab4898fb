package buzzout.cli;

import buzzout.plan.Plan;
import buzzout.plan.PlanFile;
import buzzout.plan.PlanReader;
import buzzout.report.Outcome;
import buzzout.session.OtherPlan;
import buzzout.session.Session;
import java.util.Optional;

/** A plan that the program made, checked as any other, in a file or on standard output. */
record WrittenPlan(Plan plan) {
    static WrittenPlan write(Surroundings surroundings, Optional<String> output, boolean force, String text)
            throws Failure {
        PlanFile checked = PlanReader.read(text, output.orElse("plan"));
        Plan plan = checked.plan()
                .orElseThrow(() -> new IllegalStateException("the plan made has problems: " + checked.problems()));
        if (output.isPresent()) {
            NewFile.write(surroundings, output.get(), text, force);
        } else {
            surroundings.console().say(text);
        }
        return new WrittenPlan(plan);
    }

    /** What the session that it was made from finds with it. */
    static String remark(String output, Session session, Plan plan) {
        String wrote = "Wrote " + output + ".";
        if (OtherPlan.obstacle(session.plan(), plan).isPresent()) {
            return wrote;
        }
        Session read = OtherPlan.between(session.plan(), plan).read(session);
        int findings = Outcome.of(Optional.empty(), Optional.empty(), read)
                .diagnosis()
                .findings()
                .size();
        return wrote + " With it the session has "
                + switch (findings) {
                    case 0 -> "no finding.";
                    case 1 -> "one finding.";
                    default -> findings + " findings.";
                };
    }
}
