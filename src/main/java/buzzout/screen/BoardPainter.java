package buzzout.screen;

import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.session.KeyState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

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
        // The called key last, over the edges that it shares.
        for (int key : inOrder(view)) {
            boolean called = isCalled(view, key);
            paintFrame(scale, scale.box(view.plan().keys().get(key).place()), pen, left, top, called);
        }
        if (top < 0) {
            pen.putRight(0, "more ↑", Ink.STRONG);
        }
        if (top + scale.rows() > pen.rows()) {
            pen.putRight(pen.rows() - 1, "more ↓", Ink.STRONG);
        }
    }

    private static List<Integer> inOrder(View view) {
        List<Integer> inOrder = new ArrayList<>(view.framed());
        inOrder.sort((one, other) -> Boolean.compare(isCalled(view, one), isCalled(view, other)));
        return inOrder;
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
        boolean called = isCalled(view, key.index());
        Ink ink = called ? Ink.STRONG : ink(state);
        Ink nameInk = called ? Ink.STRONG : nameInk(state);
        pen.fill(ink);
        String mark = String.valueOf(state.mark(pen.ascii()));
        pen.part(0, 0, pen.columns() - 1, 1).put(0, 0, called ? pointer(pen) + key.name() : key.name(), nameInk);
        pen.putRight(0, mark, ink);
        Optional<Joint> joint = view.session().lead().called().filter(asked -> asked.key() == key.index());
        if (joint.isPresent()) {
            paintTouch(view, joint.get(), pen);
        } else if (pen.rows() > 1 && !view.plan().isMadeUp()) {
            String nets =
                    view.plan().row(key).name() + " " + view.plan().column(key).name();
            pen.put(0, pen.rows() - 1, pen.width(nets) <= pen.columns() ? nets : "", nameInk);
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

    /** Stands before the name of the key that is called. */
    static String pointer(Pen pen) {
        return pen.ascii() ? "*" : "►";
    }

    /** Whether this key is waited for now: it is marked so that it cannot be missed. */
    private static boolean isCalled(View view, int key) {
        return view.isPressing() && view.session().called().equals(OptionalInt.of(key));
    }

    private static void paintFrame(Scale scale, Scale.Box box, Pen pen, int left, int top, boolean called) {
        Ink ink = called ? Ink.WAITING : Ink.FRAME;
        if (scale.isBoxed()) {
            Rails.frame(pen, left + box.left(), top + box.top(), left + box.right(), top + box.bottom(), ink);
        } else {
            pen.put(left + box.left(), top + box.top(), "[", ink);
            pen.put(left + box.right(), top + box.top(), "]", ink);
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
