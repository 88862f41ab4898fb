package buzzout.cli;

import buzzout.circuit.Catalogue;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.Suspect;
import buzzout.plan.Plan;
import buzzout.report.Likelihood;
import buzzout.screen.Request;
import buzzout.screen.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Findings with numbers, as lines of text, and which of them a typed word means. */
final class PlainFindings {
    private PlainFindings() {}

    /** Number, how sure, what, code; the suspects that look alike below each other. */
    static List<String> list(Snapshot now) {
        Plan plan = now.session().plan();
        List<String> lines = new ArrayList<>();
        List<Finding> findings = now.diagnosis().findings();
        for (int index = 0; index < findings.size(); index++) {
            String start =
                    (index + 1) + "  " + Likelihood.inWords(findings.get(index).probability()) + ": ";
            for (Suspect suspect : findings.get(index).suspects()) {
                lines.add(start + suspect.fault().says(plan) + "  ("
                        + suspect.fault().code(plan) + ")");
                start = "   or: ";
            }
        }
        return lines.isEmpty() ? List.of("No findings.") : lines;
    }

    /** What is repaired: the finding with this number, or the fault with this code. */
    static Optional<Request> repaired(Snapshot now, String which) {
        Plan plan = now.session().plan();
        List<Finding> findings = now.diagnosis().findings();
        for (int index = 0; index < findings.size(); index++) {
            if (which.equals(String.valueOf(index + 1))) {
                List<String> codes = findings.get(index).suspects().stream()
                        .map(suspect -> suspect.fault().code(plan))
                        .toList();
                return Optional.of(new Request.Repaired(codes.get(0), codes.subList(1, codes.size())));
            }
        }
        return Catalogue.find(plan, which).map(fault -> new Request.Repaired(fault.code(plan), List.of()));
    }
}
