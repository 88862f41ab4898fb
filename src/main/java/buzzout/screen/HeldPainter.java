package buzzout.screen;

import buzzout.report.HeldText;
import buzzout.session.AllAtOnce;
import buzzout.session.FlexCheck;
import buzzout.session.Session;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** In place of the findings while keys are held: who is down, what dropped out, what combinations answered. */
final class HeldPainter {
    private HeldPainter() {}

    static boolean isDue(Session session) {
        return session.flex().on() || session.allAtOnce().isOn();
    }

    static void paint(View view, Pen pen) {
        boolean flex = view.session().flex().on();
        Heading.paint(pen, flex ? "Flex check" : "All at once", "");
        List<String> lines = flex ? flex(view) : allAtOnce(view);
        int row = 1;
        for (String sentence : lines) {
            for (String line : pen.wrap(sentence, pen.columns() - 2, 2)) {
                pen.put(1, row++, line, Ink.PLAIN);
            }
        }
    }

    private static List<String> flex(View view) {
        FlexCheck flex = view.session().flex();
        List<String> lines = new ArrayList<>();
        lines.add(
                flex.held().isEmpty()
                        ? "Nothing is held yet."
                        : "Held: " + HeldText.keys(view.plan(), flex.held()) + ".");
        if (flex.dropouts().isEmpty()) {
            lines.add("No dropout so far. Keys of the same row or column together tell most.");
        }
        HeldText.dropouts(view.plan(), flex).forEach(each -> lines.add(each + "."));
        return lines;
    }

    private static List<String> allAtOnce(View view) {
        Session session = view.session();
        AllAtOnce all = session.allAtOnce();
        Set<Integer> missing = new HashSet<>(all.called());
        missing.removeIf(key -> session.now()
                .containsAll(AllAtOnce.computed(view.plan(), Set.of(key)).minus(session.quiet())));
        List<String> lines = new ArrayList<>();
        if (all.doubtful().isPresent()) {
            lines.add(HeldText.answer(
                            session,
                            new AllAtOnce.Tried(all.called(), all.doubtful().get()))
                    + ". Hold them once more; it counts if it comes again.");
        } else {
            lines.add(
                    missing.isEmpty()
                            ? "All of them are down: let go."
                            : "Still up: " + HeldText.keys(view.plan(), missing) + ".");
        }
        if (!all.tried().isEmpty()) {
            lines.add(HeldText.combinations(session) + ".");
        }
        all.tried().stream()
                .filter(each -> !HeldText.isAsComputed(session, each))
                .forEach(each -> lines.add(HeldText.answer(session, each) + "."));
        return lines;
    }
}
