package buzzout.screen;

import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.session.Bounces;

/** One line about the key that a keystroke would be about: its state in words, its nets and their pins. */
final class KeyPainter {
    private KeyPainter() {}

    static void paint(View view, Pen pen) {
        Key key = view.plan().keys().get(view.subject());
        String name = "Key " + key.spoken();
        pen.put(1, 0, name, Ink.STRONG);
        String nets = view.plan().isMadeUp()
                ? "its row and column are to be learnt"
                : net(view.plan().row(key)) + ", " + net(view.plan().column(key));
        String words = view.state(key.index()).word() + "; " + nets;
        pen.put(1 + pen.width(name), 0, ": " + words + bounce(view, key), Ink.PLAIN);
    }

    private static String bounce(View view, Key key) {
        Bounces bounces = view.session().bounces();
        for (Bounces.OfKey each : bounces.overLimit()) {
            if (each.key() == key.index()) {
                return "; bounces " + each.longest() / 1000 + " ms, limit " + bounces.limitMicros() / 1000;
            }
        }
        return "";
    }

    private static String net(Net net) {
        return net.kind().word() + " " + net.name() + " on pin " + net.pin()
                + net.colour().map(colour -> " (" + colour + ")").orElse("");
    }
}
