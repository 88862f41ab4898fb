package buzzout.screen;

import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.session.KeyState;
import java.util.Optional;
import java.util.Set;

/** The board, to scale. */
final class BoardPainter {
    private BoardPainter() {}

    /** The scale that the board is drawn at, in so many columns and rows at most. */
    static Scale scale(View view, int columns, int rows) {
        return Scale.fitting(view.plan(), view.focus().side(), columns, rows);
    }

    static void paint(View view, Pen pen) {
        Scale scale = scale(view, pen.columns(), pen.rows());
        Scale.Box subject = scale.box(view.plan().keys().get(view.subject()).place());
        int left = offset(scale.columns(), pen.columns(), subject.left(), subject.right());
        int top = offset(scale.rows(), pen.rows(), subject.top(), subject.bottom());
        Set<Integer> framed = view.framed();
        if (scale.isBoxed()) {
            Rails rails = new Rails(scale.columns(), scale.rows());
            for (Key key : view.plan().keys()) {
                Scale.Box box = scale.box(key.place());
                rails.box(box.left(), box.top(), box.right(), box.bottom());
            }
            rails.draw(pen, left, top);
        }
        for (Key key : view.plan().keys()) {
            Scale.Box box = scale.box(key.place());
            paintInside(view, key, inside(scale, box, pen, left, top));
        }
        for (int key : framed) {
            paintFrame(scale, scale.box(view.plan().keys().get(key).place()), pen, left, top);
        }
        if (top < 0) {
            pen.putRight(0, "more ↑", Ink.STRONG);
        }
        if (top + scale.rows() > pen.rows()) {
            pen.putRight(pen.rows() - 1, "more ↓", Ink.STRONG);
        }
    }

    /** Where the board begins: centred where there is room, else so that the subject is well in view. */
    private static int offset(int size, int room, int from, int to) {
        if (size <= room) {
            return (room - size) / 2;
        }
        int middle = (from + to) / 2;
        return -Math.max(0, Math.min(size - room, middle - room / 2));
    }

    private static Pen inside(Scale scale, Scale.Box box, Pen pen, int left, int top) {
        int edge = scale.isBoxed() ? 1 : 0;
        return pen.part(
                left + box.left() + 1,
                top + box.top() + edge,
                box.right() - box.left() - 1,
                Math.max(1, box.bottom() - box.top() - 1));
    }

    /** Name and mark; with more room its nets too, and with more still the state's word, unless it is good. */
    private static void paintInside(View view, Key key, Pen pen) {
        KeyState state = view.state(key.index());
        Ink ink = ink(state);
        pen.fill(ink);
        String mark = String.valueOf(state.mark(pen.ascii()));
        pen.part(0, 0, pen.columns() - 1, 1).put(0, 0, key.name(), nameInk(state));
        pen.putRight(0, mark, ink);
        Optional<Joint> joint = view.session().lead().called().filter(called -> called.key() == key.index());
        if (joint.isPresent()) {
            paintTouch(view, joint.get(), pen);
        } else if (pen.rows() > 1) {
            String nets =
                    view.plan().row(key).name() + " " + view.plan().column(key).name();
            pen.put(0, pen.rows() - 1, pen.width(nets) <= pen.columns() ? nets : "", nameInk(state));
        }
        if (pen.rows() > 2 && !state.isWell()) {
            pen.putRight(1, state.word(), ink);
        }
    }

    /** The joint to touch: its net where there is room, else its mark in the place of the key's own. */
    private static void paintTouch(View view, Joint joint, Pen pen) {
        String mark = pen.ascii() ? "@" : "◎";
        if (pen.rows() > 1) {
            String net = mark + view.plan().nets().get(joint.net(view.plan())).name();
            pen.put(0, pen.rows() - 1, net, Ink.WAITING);
        } else {
            pen.putRight(0, mark, Ink.WAITING);
        }
    }

    private static void paintFrame(Scale scale, Scale.Box box, Pen pen, int left, int top) {
        if (scale.isBoxed()) {
            Rails.frame(pen, left + box.left(), top + box.top(), left + box.right(), top + box.bottom());
        } else {
            pen.put(left + box.left(), top + box.top(), "[", Ink.FRAME);
            pen.put(left + box.right(), top + box.top(), "]", Ink.FRAME);
        }
    }

    static Ink ink(KeyState state) {
        return switch (state) {
            case UNTESTED -> Ink.WAITING;
            case GOOD -> Ink.GOOD;
            default -> Ink.WRONG;
        };
    }

    /** A good key recedes: only its mark has a colour. */
    private static Ink nameInk(KeyState state) {
        return state == KeyState.GOOD ? Ink.PLAIN : ink(state);
    }
}
