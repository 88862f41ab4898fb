package buzzout.screen;

import buzzout.diagnosis.NextStep;
import buzzout.diagnosis.Step;
import buzzout.session.KeyState;
import buzzout.session.Met;
import buzzout.session.Session;
import java.util.Optional;

/** One line that says what goes on and what to do. */
final class StagePainter {
    private StagePainter() {}

    static void paint(View view, Pen pen) {
        boolean trouble = view.snapshot().warning().isPresent()
                || view.session().linkTrouble().isPresent();
        pen.put(1, 0, words(view), trouble ? Ink.WRONG : Ink.STRONG);
    }

    static String words(View view) {
        Session session = view.session();
        if (view.snapshot().warning().isPresent()) {
            return view.snapshot().warning().get();
        } else if (session.linkTrouble().isPresent()) {
            return "Link down: " + session.linkTrouble().get();
        }
        return switch (session.stage()) {
            case NO_PROBE -> "Looking for the probe. Plug its USB cable in; press nothing yet.";
            case QUIET_CHECK -> "Quiet check: hands off the keys for a moment.";
            case PRESSING -> pressing(view, session);
            case ENDED -> "The session has ended.";
        };
    }

    private static String pressing(View view, Session session) {
        Optional<NextStep> next = view.snapshot().diagnosis().next().stream().findFirst();
        if (!session.lead().now().isEmpty()) {
            return "The flying lead is "
                    + LeadWords.of(
                            view.plan(), Met.of(view.plan(), session.lead().now())) + ".";
        } else if (session.lead().called().isPresent()) {
            return "Touch " + session.lead().called().get().says(view.plan()) + ". On nothing? Type n.";
        } else if (session.called().isPresent()) {
            String name = view.plan().keys().get(session.called().getAsInt()).spoken();
            return "Press " + name + " now. If you did and nothing came, type n.";
        } else if (view.count(KeyState.UNTESTED) > 0) {
            return "Press every key, in any order; those still untested stand out.";
        } else if (view.count(KeyState.GOOD) == view.states().size()) {
            return "Every key is good.";
        }
        if (next.isPresent()) {
            String how = next.get().step() instanceof Step.Touch ? ". Type t when ready." : ".";
            return "Next: " + next.get().does() + how;
        }
        return "Every key has had its press. What is wrong stands in the findings.";
    }
}
