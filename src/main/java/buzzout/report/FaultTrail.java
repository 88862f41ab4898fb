package buzzout.report;

import buzzout.circuit.Fault;
import buzzout.diagnosis.Finding;
import buzzout.plan.Plan;
import buzzout.session.KeyState;
import buzzout.session.Retest;
import buzzout.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Follows faults through the sessions of one unit. A finding that shares a suspect with an earlier one is the same fault,
 * and the later session knows better which; where a session in between showed it gone, it came back.
 */
final class FaultTrail {
    private Finding finding;
    private Plan plan;
    private boolean gone;
    private int times = 1;

    private FaultTrail(Plan plan, Finding finding) {
        this.plan = plan;
        this.finding = finding;
    }

    /** Every fault found, in the order in which they were; sessions oldest first. */
    static List<FaultFound> of(List<WeighedLog> sessions) {
        List<FaultTrail> trails = new ArrayList<>();
        for (WeighedLog log : sessions) {
            Plan plan = log.outcome().plan();
            List<FaultTrail> unseen = new ArrayList<>(trails);
            for (Finding finding : log.outcome().diagnosis().findings()) {
                unseen.stream()
                        .filter(trail -> trail.isAbout(plan, finding))
                        .findFirst()
                        .ifPresentOrElse(
                                trail -> {
                                    unseen.remove(trail);
                                    trail.goOn(plan, finding);
                                },
                                () -> trails.add(new FaultTrail(plan, finding)));
            }
            unseen.forEach(trail -> trail.gone |= isRetested(log.outcome().session(), trail.finding));
        }
        return trails.stream().map(FaultTrail::found).toList();
    }

    /** Whether every key that a repair of any suspect can have changed was pressed, so that the fault would have shown. */
    static boolean isRetested(Session session, Finding finding) {
        List<KeyState> states = session.states();
        return finding.suspects().stream()
                .flatMap(suspect -> Retest.keys(session.plan(), suspect.fault()).stream())
                .allMatch(key -> key < states.size() && states.get(key) != KeyState.UNTESTED);
    }

    static Set<String> codes(Plan plan, Finding finding) {
        return finding.suspects().stream()
                .map(suspect -> suspect.fault().code(plan))
                .collect(Collectors.toSet());
    }

    private boolean isAbout(Plan itsPlan, Finding other) {
        Set<String> known = codes(plan, finding);
        return codes(itsPlan, other).stream().anyMatch(known::contains);
    }

    private void goOn(Plan itsPlan, Finding again) {
        times += gone ? 1 : 0;
        gone = false;
        plan = itsPlan;
        finding = again;
    }

    private FaultFound found() {
        Fault first = finding.first().fault();
        return new FaultFound(
                first.code(plan),
                first.kind(),
                first.says(plan),
                finding.suspects().size() == 1,
                times);
    }
}
