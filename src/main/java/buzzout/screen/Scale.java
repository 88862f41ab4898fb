package buzzout.screen;

import buzzout.plan.Key;
import buzzout.plan.Place;
import buzzout.plan.Plan;
import buzzout.plan.Side;

/**
 * How a plan's key pitches become columns and lines, on one side of the board.
 *
 * @param across columns to a pitch, at least 2
 * @param down lines to a pitch; with 1 there is no room for lines between the keys
 */
record Scale(Extent extent, Side side, int across, int down) {
    /** The least columns to a pitch for 1, 2, 3 and 4 lines to a pitch: with 4, the longest state's word fits. */
    private static final int[] LEAST_ACROSS = {2, 4, 7, 15};

    /** More than this would look like a bar and not like a key. */
    private static final int[] MOST_ACROSS = {6, 7, 10, 16};

    /** The rectangle that all keys lie in, in key pitches, cap side. */
    record Extent(double left, double top, double right, double bottom) {
        static Extent of(Plan plan) {
            double left = Double.MAX_VALUE;
            double top = Double.MAX_VALUE;
            double right = -Double.MAX_VALUE;
            double bottom = -Double.MAX_VALUE;
            for (Key key : plan.keys()) {
                Place place = key.place();
                left = Math.min(left, place.x());
                top = Math.min(top, place.y());
                right = Math.max(right, place.x() + place.width());
                bottom = Math.max(bottom, place.y() + 1);
            }
            return new Extent(left, top, right, bottom);
        }
    }

    /** Cells from the board's upper left corner; the edges are shared with the neighbours. */
    record Box(int left, int top, int right, int bottom) {}

    /** The largest that fits; where none does, the smallest, to be scrolled. */
    static Scale fitting(Plan plan, Side side, int columns, int rows) {
        Extent extent = Extent.of(plan);
        for (int down = LEAST_ACROSS.length; down >= 1; down--) {
            int most = (int) ((columns - 1) / (extent.right() - extent.left()));
            Scale scale = new Scale(extent, side, Math.min(MOST_ACROSS[down - 1], most), down);
            if (scale.across() >= LEAST_ACROSS[down - 1] && scale.rows() <= rows) {
                return scale;
            }
        }
        return new Scale(
                extent,
                side,
                Math.max(LEAST_ACROSS[0], Math.min(MOST_ACROSS[0], (int)
                        ((columns - 1) / (extent.right() - extent.left())))),
                1);
    }

    boolean isBoxed() {
        return down > 1;
    }

    int columns() {
        return cells(extent.right() - extent.left(), across) + 1;
    }

    int rows() {
        return cells(extent.bottom() - extent.top(), down) + (isBoxed() ? 1 : 0);
    }

    /** Where a key is drawn. A box includes its edges; without lines between keys it is one row high. */
    Box box(Place place) {
        double from = place.x() - extent.left();
        double left = side == Side.CAP ? from : extent.right() - extent.left() - from - place.width();
        double top = place.y() - extent.top();
        return new Box(
                cells(left, across),
                cells(top, down),
                cells(left + place.width(), across),
                isBoxed() ? cells(top + 1, down) : cells(top, down));
    }

    private static int cells(double pitches, int each) {
        return (int) Math.round(pitches * each);
    }
}
