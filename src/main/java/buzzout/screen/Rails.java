package buzzout.screen;

/** Lines of boxes that share edges, joined where they meet. */
final class Rails {
    private static final int NORTH = 1;
    private static final int EAST = 2;
    private static final int SOUTH = 4;
    private static final int WEST = 8;
    /** One glyph for each set of arms, in the order of the bits above. */
    private static final String GLYPHS = " │─└││┌├─┘─┴┐┤┬┼";

    private final int[][] arms;

    Rails(int columns, int rows) {
        arms = new int[rows][columns];
    }

    /** Draws a box; both corners are part of it. */
    void box(int left, int top, int right, int bottom) {
        for (int column = left; column < right; column++) {
            for (int row : new int[] {top, bottom}) {
                arms[row][column] |= EAST;
                arms[row][column + 1] |= WEST;
            }
        }
        for (int row = top; row < bottom; row++) {
            for (int column : new int[] {left, right}) {
                arms[row][column] |= SOUTH;
                arms[row + 1][column] |= NORTH;
            }
        }
    }

    /** On an area that is blank so far. */
    void draw(Pen pen, int left, int top) {
        for (int row = 0; row < arms.length; row++) {
            StringBuilder line = new StringBuilder();
            for (int each : arms[row]) {
                line.append(GLYPHS.charAt(each));
            }
            pen.put(left, top + row, line.toString(), Ink.PLAIN);
        }
    }

    /** A double frame over a box already drawn. */
    static void frame(Pen pen, int left, int top, int right, int bottom, Ink ink) {
        String bar = "═".repeat(Math.max(0, right - left - 1));
        pen.put(left, top, "╔" + bar + "╗", ink);
        pen.put(left, bottom, "╚" + bar + "╝", ink);
        for (int row = top + 1; row < bottom; row++) {
            pen.put(left, row, "║", ink);
            pen.put(right, row, "║", ink);
        }
    }
}
