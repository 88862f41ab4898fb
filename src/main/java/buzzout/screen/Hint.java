package buzzout.screen;

import java.util.ArrayList;
import java.util.List;

/** A keystroke and what it does now, most needed first. */
record Hint(String stroke, String does) {
    static List<Hint> of(View view) {
        if (view.focus().help()) {
            return List.of(new Hint("?", "back to the board"), new Hint("q", "quit"));
        }
        if (view.focus().bounce()) {
            return List.of(new Hint("b", "back to the board"), new Hint("q", "quit"));
        }
        String name = view.plan().keys().get(view.subject()).spoken();
        List<Hint> hints = new ArrayList<>();
        hints.add(new Hint("?", "help"));
        hints.add(new Hint("q", "quit"));
        if (HeldPainter.isDue(view.session())) {
            boolean flex = view.session().flex().on();
            hints.add(new Hint(flex ? "f" : "a", "done"));
            if (view.setting().simulated()) {
                hints.add(new Hint("Enter", flex ? "hold or let go " + name : "hold and let go"));
            }
            hints.add(new Hint("u", "take back"));
            hints.add(new Hint("s", "turn over"));
            return hints;
        }
        if (view.isPressing() && view.setting().simulated()) {
            hints.add(new Hint("Enter", "press " + name));
        }
        if (view.isPressing()) {
            hints.add(new Hint("n", "nothing came"));
        }
        if ((view.isPressing() && view.isCalling()) || view.isRepairing()) {
            hints.add(new Hint("u", "take back"));
        }
        if (view.chosen().isPresent() && (view.isPressing() || view.isRepairing())) {
            hints.add(new Hint("d", "repaired"));
        }
        if (!view.findings().isEmpty()) {
            hints.add(new Hint("Tab", "findings"));
        }
        hints.add(new Hint("s", "turn over"));
        if (view.isPressing() && view.isCalling()) {
            hints.add(new Hint("c", "leave the roll call"));
        } else if (view.isPressing()) {
            hints.add(new Hint("c", "roll call"));
            hints.add(new Hint("u", "take back"));
            hints.add(new Hint("e", "all pressed"));
        }
        if (view.isPressing()) {
            hints.add(new Hint("f", "flex"));
            hints.add(new Hint("a", "all at once"));
        }
        hints.add(new Hint("b", "bounce"));
        if (view.setting().sound().offered()) {
            hints.add(new Hint("m", view.setting().sound().muted() ? "hear tones" : "mute"));
        }
        return hints;
    }

    /** As many as fit one line, whole ones only. */
    static void paint(View view, Pen pen) {
        int column = 1;
        for (Hint hint : of(view)) {
            int width = pen.width(hint.stroke) + 1 + pen.width(hint.does);
            if (column + width > pen.columns()) {
                return;
            }
            pen.put(column, 0, hint.stroke, Ink.STRONG);
            pen.put(column + pen.width(hint.stroke) + 1, 0, hint.does, Ink.PLAIN);
            column += width + 2;
        }
    }
}
