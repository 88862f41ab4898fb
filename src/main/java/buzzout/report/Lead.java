package buzzout.report;

import buzzout.plan.Net;
import java.util.List;

/**
 * The way of a lead from its joint to the edge of the board, in millimetres on the cap side.
 *
 * @param tag the middle of the label at its end
 */
record Lead(Net net, Edge edge, List<Point> way, Point tag) {
    enum Edge {
        LEFT,
        RIGHT,
        TOP,
        BOTTOM;

        boolean isUpright() {
            return this == TOP || this == BOTTOM;
        }
    }

    Lead {
        way = List.copyOf(way);
    }
}
