package buzzout.screen;

import buzzout.report.HeldText;
import buzzout.session.AllAtOnce;
import buzzout.session.FlexCheck;
import buzzout.session.Session;
import java.util.List;
import java.util.Optional;

/** What an event while keys are held comes to, in words. */
final class HeldLines {
    private HeldLines() {}

    /** What is new, where something is. */
    static Optional<String> of(Session before, Session after) {
        List<FlexCheck.Dropout> dropouts = after.flex().dropouts();
        List<AllAtOnce.Tried> tried = after.allAtOnce().tried();
        if (dropouts.size() > before.flex().dropouts().size()) {
            return Optional.of(dropout(after, dropouts.get(dropouts.size() - 1)));
        } else if (tried.size() > before.allAtOnce().tried().size()) {
            return Optional.of(HeldText.answer(after, tried.get(tried.size() - 1)));
        } else if (isDoubted(before, after)) {
            AllAtOnce all = after.allAtOnce();
            return Optional.of(HeldText.answer(
                            after,
                            new AllAtOnce.Tried(all.called(), all.doubtful().orElseThrow())) + "; hold them once more");
        }
        return Optional.empty();
    }

    /** The line that is no longer true, where a dropout goes on instead of having ended. */
    static Optional<String> noLonger(Session before, Session after) {
        Optional<String> last = Optional.empty();
        for (FlexCheck.Dropout each : before.flex().dropouts()) {
            if (!after.flex().dropouts().contains(each)) {
                last = Optional.of(dropout(before, each));
            }
        }
        return last;
    }

    private static boolean isDoubted(Session before, Session after) {
        return after.allAtOnce().doubtful().isPresent()
                && !after.allAtOnce().doubtful().equals(before.allAtOnce().doubtful());
    }

    private static String dropout(Session session, FlexCheck.Dropout dropout) {
        return session.plan().keys().get(dropout.key()).spoken() + " dropped out for "
                + HeldText.millis(dropout.micros()) + " ms";
    }
}
