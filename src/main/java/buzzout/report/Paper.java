package buzzout.report;

/** Paper to print on, lying. What is drawn fits the smaller of both ways, so that one picture serves both. */
public enum Paper {
    A4("A4", 297, 210),
    LETTER("letter", 279.4, 215.9);

    /** Of what is drawn on a page, in millimetres; about 10 are left at each edge. */
    static final double DRAWN_WIDTH = 259;

    static final double DRAWN_HEIGHT = 189;

    private final String css;
    private final double width;
    private final double height;

    Paper(String css, double width, double height) {
        this.css = css;
        this.width = width;
        this.height = height;
    }

    /** Its name in a style sheet. */
    String css() {
        return css;
    }

    /** In millimetres. */
    double width() {
        return width;
    }

    double height() {
        return height;
    }
}
