package buzzout.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Drawings as SVG, whose lengths are millimetres. Well-formed whatever the names on the board are. */
public final class SvgDrawing {
    private static final String FONT = "Helvetica, Arial, 'Liberation Sans', sans-serif";

    private final StringBuilder svg = new StringBuilder();

    private SvgDrawing() {}

    /** A file of its own. */
    public static String file(Drawing drawing, String title) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + element(drawing, title);
    }

    /** An element to stand in a page; it takes the width it is given and keeps its proportions. */
    public static String element(Drawing drawing, String title) {
        return new SvgDrawing().written(drawing, title);
    }

    private String written(Drawing drawing, String title) {
        String width = number(drawing.width());
        String height = number(drawing.height());
        add("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "mm\" height=\"" + height
                + "mm\" viewBox=\"0 0 " + width + " " + height + "\" role=\"img\" font-family=\"" + FONT
                + "\" stroke-linecap=\"round\" stroke-linejoin=\"round\">");
        add("<title>" + escaped(title) + "</title>");
        add("<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"" + Tint.PAPER.hex() + "\"/>");
        drawing.shapes().forEach(this::add);
        add("</svg>");
        return svg.toString();
    }

    private void add(Shape shape) {
        if (shape instanceof Shape.Line line) {
            String points = line.points().stream().map(SvgDrawing::pair).collect(Collectors.joining(" "));
            add("<polyline points=\"" + points + "\" fill=\"none\"" + stroke(line.stroke()) + "/>");
        } else if (shape instanceof Shape.Curve curve) {
            String path = "M" + pair(curve.from()) + " Q" + pair(curve.bend()) + " " + pair(curve.to());
            add("<path d=\"" + path + "\" fill=\"none\"" + stroke(curve.stroke()) + "/>");
        } else if (shape instanceof Shape.Box box) {
            add("<rect x=\"" + number(box.corner().x()) + "\" y=\""
                    + number(box.corner().y()) + "\" width=\"" + number(box.width()) + "\" height=\""
                    + number(box.height()) + "\"" + fill(box.fill()) + stroke(box.edge()) + "/>");
        } else if (shape instanceof Shape.Disc disc) {
            add(circle(disc.middle(), disc.radius()) + fill(disc.fill()) + stroke(disc.edge()) + "/>");
        } else if (shape instanceof Shape.Ring ring) {
            add(circle(ring.middle(), ring.radius()) + " fill=\"none\"" + stroke(ring.edge()) + "/>");
        } else if (shape instanceof Shape.Words words) {
            add("<text x=\"" + number(words.at().x()) + "\" y=\""
                    + number(words.at().y()) + "\" font-size=\"" + number(words.size()) + "\""
                    + anchor(words.anchor()) + (words.bold() ? " font-weight=\"bold\"" : "") + fill(words.tint())
                    + halo(words) + ">"
                    + escaped(words.text()) + "</text>");
        }
    }

    private static String circle(Point middle, double radius) {
        return "<circle cx=\"" + number(middle.x()) + "\" cy=\"" + number(middle.y()) + "\" r=\"" + number(radius)
                + "\"";
    }

    private static String anchor(Shape.Anchor anchor) {
        return switch (anchor) {
            case START -> "";
            case MIDDLE -> " text-anchor=\"middle\"";
            case END -> " text-anchor=\"end\"";
        };
    }

    /** A rim of paper, so that dark text can be read across a line. */
    private static String halo(Shape.Words words) {
        return words.tint().equals(Tint.PAPER)
                ? ""
                : stroke(new Stroke(Tint.PAPER, Shape.Words.RIM * words.size())) + " paint-order=\"stroke\"";
    }

    private static String fill(Tint tint) {
        return " fill=\"" + tint.hex() + "\"";
    }

    private static String stroke(Stroke stroke) {
        if (stroke.width() == 0) {
            return "";
        }
        return " stroke=\"" + stroke.tint().hex() + "\" stroke-width=\"" + number(stroke.width()) + "\""
                + dashes(stroke.dashes());
    }

    private static String dashes(List<Double> dashes) {
        return dashes.isEmpty()
                ? ""
                : " stroke-linecap=\"butt\" stroke-dasharray=\""
                        + dashes.stream().map(SvgDrawing::number).collect(Collectors.joining(" ")) + "\"";
    }

    private static String pair(Point point) {
        return number(point.x()) + "," + number(point.y());
    }

    /** To a hundredth of a millimetre. */
    static String number(double millimetres) {
        String text = String.format(Locale.ROOT, "%.2f", millimetres);
        return text.contains(".") ? text.replaceFirst("\\.?0+$", "").replaceFirst("^-0$", "0") : text;
    }

    /** Text for XML; what XML cannot hold becomes a replacement character. */
    static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        text.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(isXml(point) ? point : 0xFFFD);
            }
        });
        return escaped.toString();
    }

    /** The Char production of XML 1.0, section 2.2, without the line breaks. */
    private static boolean isXml(int point) {
        return (point >= 0x20 && point <= 0xD7FF) || (point >= 0xE000 && point <= 0xFFFD) || point >= 0x10000;
    }

    private void add(String line) {
        svg.append(line).append('\n');
    }
}
