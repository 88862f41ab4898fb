package buzzout.report;

import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Place;
import buzzout.plan.Plan;
import buzzout.plan.Side;

/**
 * Where everything on a board lies, in millimetres from the upper left corner of the rectangle around its keys, seen
 * from one side. Key middles are true to scale; where a switch's two pins sit on it is a convention of these drawings,
 * because no plan says it.
 */
record Positions(Plan plan, Side side, double left, double top, double width, double height) {
    /** Key pitch: common practice. */
    static final double PITCH = 19.05;

    /** How far from a key's middle its joints lie, along and across the chain made of diode legs. */
    private static final double OUT = 6.6;

    private static final double IN = 6.2;

    static Positions of(Plan plan, Side side) {
        double left =
                plan.keys().stream().mapToDouble(key -> key.place().x()).min().orElse(0);
        double top =
                plan.keys().stream().mapToDouble(key -> key.place().y()).min().orElse(0);
        double right = plan.keys().stream()
                .mapToDouble(key -> key.place().x() + key.place().width())
                .max()
                .orElse(1);
        double bottom = plan.keys().stream()
                .mapToDouble(key -> key.place().y() + 1)
                .max()
                .orElse(1);
        return new Positions(plan, side, left, top, (right - left) * PITCH, (bottom - top) * PITCH);
    }

    /** A point of the cap side as this side shows it. */
    Point seen(Point onCaps) {
        return side == Side.CAP ? onCaps : new Point(width - onCaps.x(), onCaps.y());
    }

    /** 1 where right is right, −1 where the board is seen mirrored. */
    int handed() {
        return side == Side.CAP ? 1 : -1;
    }

    Point middle(Key key) {
        Place place = key.place();
        return seen(new Point((place.middle() - left) * PITCH, (place.y() + 0.5 - top) * PITCH));
    }

    double wide(Key key) {
        return key.place().width() * PITCH;
    }

    /** The end of the diode that stands on the switch's pin. */
    Point diodePin(Key key) {
        return plan.diodes() == NetKind.ROW ? at(key, -OUT, -IN) : at(key, -IN, -OUT);
    }

    Point joint(Joint joint) {
        Key key = plan.keys().get(joint.key());
        boolean diode = joint.kind() == plan.diodes();
        if (joint.kind() == NetKind.ROW) {
            return diode ? at(key, -OUT, OUT) : at(key, -IN, OUT);
        }
        return diode ? at(key, OUT, -OUT) : at(key, OUT, -IN);
    }

    /** Straight from joint to joint. */
    double length(Net net, Link link) {
        return joint(net.joint(link.from())).to(joint(net.joint(link.to())));
    }

    private Point at(Key key, double right, double down) {
        return middle(key).moved(handed() * right, down);
    }
}
