package buzzout.screen;

import buzzout.diagnosis.NextStep;
import buzzout.diagnosis.Step;
import buzzout.report.HeldText;
import buzzout.session.KeyState;
import buzzout.session.Met;
import buzzout.session.Press;
import buzzout.session.Retest;
import buzzout.session.Session;
import java.util.Optional;
import java.util.stream.Collectors;

/** One line that says what goes on and what to do. */
final class StagePainter {
    private static final int MOST_AGAIN = 3;

    private StagePainter() {}

    static void paint(View view, Pen pen) {
        boolean trouble = view.snapshot().warning().isPresent()
                || (view.session().linkTrouble().isPresent() && !view.isRepairing());
        pen.put(1, 0, words(view), trouble ? Ink.WRONG : Ink.STRONG);
    }

    static String words(View view) {
        Session session = view.session();
        if (view.snapshot().warning().isPresent()) {
            return view.snapshot().warning().get();
        } else if (view.isRepairing()) {
            return session.linkTrouble().isPresent()
                    ? "Unplugged. Repair it, then plug in again: a quiet check follows."
                    : "Unplug, repair, plug in again: a quiet check follows. Done already? Type d.";
        } else if (session.linkTrouble().isPresent()) {
            return "Link down: " + session.linkTrouble().get();
        }
        return switch (session.stage()) {
            case NO_PROBE -> "Looking for the probe. Plug its USB cable in; press nothing yet.";
            case QUIET_CHECK -> "Quiet check: hands off the keys for a moment.";
            case REPAIRING -> "";
            case PRESSING -> pressing(view, session);
            case ENDED -> "The session has ended.";
        };
    }

    private static String pressing(View view, Session session) {
        Optional<NextStep> next = view.snapshot().diagnosis().next().stream().findFirst();
        Optional<Retest.Result> retested = Retest.result(session);
        if (session.flex().on()) {
            return "Hold one or more keys down firmly and flex the plate. f when you are done.";
        } else if (session.allAtOnce().isOn()) {
            return HeldText.toHold(session);
        } else if (!session.lead().now().isEmpty()) {
            return "The flying lead is "
                    + LeadWords.of(
                            view.plan(), Met.of(view.plan(), session.lead().now())) + ".";
        } else if (session.lead().called().isPresent()) {
            return "Touch " + session.lead().called().get().says(view.plan()) + ". On nothing? Type n.";
        } else if (session.called().isPresent()) {
            return called(view, session, spoken(view, session.called().getAsInt()));
        } else if (view.isCalling()) {
            return session.isKeyDown() ? "Let go." : "";
        } else if (session.isReading()) {
            return "Read through: each key once, in reading order, eyes on the board. Then type r.";
        } else if (!again(view).isEmpty()) {
            return "Press " + again(view) + " once more: a slip or a fault? If nothing comes, type n on it.";
        } else if (retested.isPresent()) {
            return RetestWords.of(session, retested.get());
        } else if (view.count(KeyState.UNTESTED) > 0) {
            return "Press every key, in any order; those still untested stand out.";
        } else if (view.count(KeyState.GOOD) == view.states().size()
                && !view.plan().isMadeUp()) {
            return "Every key is good.";
        } else if (view.plan().isMadeUp()) {
            return "Every key has had its press. Type q: the plan is written then.";
        }
        if (next.isPresent()) {
            String stroke = next.get().step() instanceof Step.Touch ? "Next (t): " : "Next: ";
            return stroke + next.get().does() + ".";
        }
        return "Every key has had its press. What is wrong stands in the findings.";
    }

    /** The keys in doubt, as many as fit a line; the rest are asked for when these are settled. */
    private static String again(View view) {
        return view.snapshot().diagnosis().again().stream()
                .limit(MOST_AGAIN)
                .map(key -> view.plan().keys().get(key).spoken())
                .collect(Collectors.joining(", "));
    }

    /** What to press, and where the last press was not as planned, how to mend it if that was a slip. */
    private static String called(View view, Session session, String name) {
        int left = session.toCall().size();
        int all = session.rollCall().map(call -> call.keys().size()).orElse(left);
        String count = left == 0 ? "" : " (" + (all - left + 1) + " of " + all + ")";
        return mishap(view, session)
                .map(what -> what + ". A slip? u. Else press " + name + count + ".")
                .orElse("Press " + name + " now" + count + ". If you did and nothing came, type n.");
    }

    private static Optional<String> mishap(View view, Session session) {
        if (session.presses().isEmpty()) {
            return Optional.empty();
        }
        Press last = session.presses().get(session.presses().size() - 1);
        return last.called().stream()
                .filter(key -> view.state(key) != KeyState.GOOD)
                .mapToObj(key -> spoken(view, key) + " was called, " + answer(view, last, key))
                .findFirst();
    }

    private static String answer(View view, Press press, int called) {
        if (press.pairs().isEmpty()) {
            return "nothing came";
        }
        boolean another = press.presumed().isPresent() && press.presumed().getAsInt() != called;
        return another ? spoken(view, press.presumed().getAsInt()) + " answered" : "answered otherwise";
    }

    private static String spoken(View view, int key) {
        return view.plan().keys().get(key).spoken();
    }
}
