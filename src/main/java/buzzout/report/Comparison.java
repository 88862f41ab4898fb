package buzzout.report;

import buzzout.circuit.Catalogue;
import buzzout.diagnosis.Finding;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.KeyState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What changed on one unit from one session to a later one.
 *
 * @param fixed findings of the first that are gone, everything that they concern having been pressed again
 * @param left findings of both, as the second names them
 * @param broken findings of the second only
 * @param unproven findings of the first that are not in the second, which did not press all that they concern
 * @param keys every key of both plans whose state is not the same, and those that are not good in both
 * @param remarks sentences: why the two might not belong together
 */
public record Comparison(
        WeighedLog before,
        WeighedLog after,
        List<Named> fixed,
        List<Named> left,
        List<Named> broken,
        List<Named> unproven,
        List<KeyChange> keys,
        List<String> remarks) {
    /**
     * A finding by its first suspect.
     *
     * @param says the end of a sentence
     * @param settled whether it is the only one
     */
    public record Named(String code, String says, boolean settled) {}

    public record KeyChange(String key, KeyState before, KeyState after) {
        boolean isFixed() {
            return after == KeyState.GOOD && before != KeyState.UNTESTED;
        }

        boolean isBroken() {
            return before == KeyState.GOOD && after != KeyState.UNTESTED;
        }

        boolean isLeft() {
            return before != KeyState.GOOD && before != KeyState.UNTESTED && isTestedAfter() && after != KeyState.GOOD;
        }

        boolean isTestedAfter() {
            return after != KeyState.UNTESTED;
        }
    }

    public Comparison {
        fixed = List.copyOf(fixed);
        left = List.copyOf(left);
        broken = List.copyOf(broken);
        unproven = List.copyOf(unproven);
        keys = List.copyOf(keys);
        remarks = List.copyOf(remarks);
    }

    public static Comparison of(WeighedLog before, WeighedLog after) {
        Outcome first = before.outcome();
        Outcome second = after.outcome();
        List<Named> fixed = new ArrayList<>();
        List<Named> unproven = new ArrayList<>();
        for (Finding finding : first.diagnosis().findings()) {
            if (same(first.plan(), finding, second).isEmpty()) {
                (isProven(first.plan(), finding, second) ? fixed : unproven).add(named(first.plan(), finding));
            }
        }
        List<Named> left = new ArrayList<>();
        List<Named> broken = new ArrayList<>();
        for (Finding finding : second.diagnosis().findings()) {
            (same(second.plan(), finding, first).isPresent() ? left : broken).add(named(second.plan(), finding));
        }
        return new Comparison(
                before, after, fixed, left, broken, unproven, changes(first, second), remarks(first, second));
    }

    private static Named named(Plan plan, Finding finding) {
        return new Named(
                finding.first().fault().code(plan),
                finding.first().fault().says(plan),
                finding.suspects().size() == 1);
    }

    /** The finding of another outcome that shares a suspect with this one. */
    private static Optional<Finding> same(Plan plan, Finding finding, Outcome other) {
        Set<String> codes = FaultTrail.codes(plan, finding);
        return other.diagnosis().findings().stream()
                .filter(each -> FaultTrail.codes(other.plan(), each).stream().anyMatch(codes::contains))
                .findFirst();
    }

    /** Whether the later session pressed all that the finding concerns, under a plan that can have the same fault. */
    private static boolean isProven(Plan plan, Finding finding, Outcome later) {
        return finding.suspects().stream()
                        .allMatch(suspect -> Catalogue.find(
                                        later.plan(), suspect.fault().code(plan))
                                .filter(suspect.fault()::equals)
                                .isPresent())
                && FaultTrail.isRetested(later.session(), finding);
    }

    private static List<KeyChange> changes(Outcome before, Outcome after) {
        List<KeyState> statesBefore = before.session().states();
        List<KeyState> statesAfter = after.session().states();
        List<KeyChange> changes = new ArrayList<>();
        for (Key key : after.plan().keys()) {
            before.plan().key(key.name()).ifPresent(old -> {
                KeyState was = statesBefore.get(old.index());
                KeyState is = statesAfter.get(key.index());
                if (was != is || (is != KeyState.GOOD && is != KeyState.UNTESTED)) {
                    changes.add(new KeyChange(key.name(), was, is));
                }
            });
        }
        return changes;
    }

    private static List<String> remarks(Outcome before, Outcome after) {
        List<String> remarks = new ArrayList<>();
        if (!before.unit().equals(after.unit())) {
            remarks.add("The logs are of different units: " + before.unit().orElse("one without a mark") + " and "
                    + after.unit().orElse("one without a mark") + ".");
        }
        if (before.started().isPresent()
                && after.started().isPresent()
                && after.started().get().isBefore(before.started().get())) {
            remarks.add("The second session began before the first; should they be the other way round?");
        }
        if (!before.plan().equals(after.plan())) {
            remarks.add("The plan is not the same in both logs; keys and faults were matched by their names.");
        }
        return remarks;
    }
}
