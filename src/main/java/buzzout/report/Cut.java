package buzzout.report;

import buzzout.plan.Joint;
import buzzout.plan.Net;
import java.util.List;

/**
 * A piece of wire to cut.
 *
 * @param joints that it is soldered to, in order; the one of a lead, whose other end goes to the controller
 * @param bareAt where it is stripped: millimetres from its first end to the middle of each bare spot
 * @param length in millimetres
 */
record Cut(Net net, Use use, List<Joint> joints, List<Double> bareAt, double length) {
    /** What the wire is for. */
    enum Use {
        /** Along a net without diodes, from key to key. */
        RUN,
        JUMPER,
        /** In a chain of diode legs, where a leg is too short. */
        REACH,
        LEAD
    }

    Cut {
        joints = List.copyOf(joints);
        bareAt = List.copyOf(bareAt);
    }
}
