package buzzout.screen;

import buzzout.session.KeyState;
import buzzout.session.Session;
import java.util.stream.Collectors;

/** One line that says what goes on and what to do. */
final class StagePainter {
    private static final int MOST_AGAIN = 3;

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
        if (session.called().isPresent()) {
            String name = view.plan().keys().get(session.called().getAsInt()).spoken();
            return "Press " + name + " now. If you did and nothing came, type n.";
        } else if (session.isReading()) {
            return "Read through: each key once, in reading order, eyes on the board. Then type r.";
        } else if (!again(view).isEmpty()) {
            return "Press " + again(view) + " once more: a slip or a fault? If nothing comes, type n on it.";
        } else if (view.count(KeyState.UNTESTED) > 0) {
            return "Press every key, in any order; those still untested stand out.";
        } else if (view.count(KeyState.GOOD) == view.states().size()) {
            return "Every key is good.";
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
}
