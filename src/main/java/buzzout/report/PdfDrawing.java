package buzzout.report;

import buzzout.report.Shape.Anchor;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.Deflater;

/**
 * Drawings as PDF 1.4, one page each, in the two standard faces that every reader has (ISO 32000-1, sections 7 to 9; the
 * marking operators are its annex A). Those faces know the characters of Windows-1252; another becomes a question mark,
 * see {@link PdfNames}.
 */
public final class PdfDrawing {
    static final Charset LETTERS = Charset.forName("windows-1252");

    private static final double POINTS_A_MILLIMETRE = 72 / 25.4;

    /** How far a quarter circle's control points lie from its ends, in radii: 4/3 (√2 − 1). */
    private static final double QUARTER = 0.5523;

    private final Paper paper;
    private final List<String> objects = new ArrayList<>();

    private PdfDrawing(Paper paper) {
        this.paper = paper;
    }

    /** A file; each drawing stands in the middle of its page, true to size. */
    public static byte[] file(List<Drawing> drawings, Paper paper, String title) {
        return new PdfDrawing(paper).written(drawings, title).getBytes(StandardCharsets.ISO_8859_1);
    }

    private String written(List<Drawing> drawings, String title) {
        int firstPage = 6;
        String kids = IntStream.range(0, drawings.size())
                .mapToObj(page -> (firstPage + 2 * page) + " 0 R")
                .collect(Collectors.joining(" "));
        objects.add("<< /Type /Catalog /Pages 2 0 R >>");
        objects.add("<< /Type /Pages /Count " + drawings.size() + " /Kids [" + kids + "] >>");
        objects.add(font("Helvetica"));
        objects.add(font("Helvetica-Bold"));
        objects.add("<< /Title " + literal(title) + " /Producer (Buzzout) >>");
        for (Drawing drawing : drawings) {
            objects.add(
                    "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 " + number(paper.width() * POINTS_A_MILLIMETRE) + " "
                            + number(paper.height() * POINTS_A_MILLIMETRE)
                            + "] /Resources << /Font << /F1 3 0 R /F2 4 0 R >> >> /Contents " + (objects.size() + 2)
                            + " 0 R >>");
            String content = packed(content(drawing));
            objects.add(
                    "<< /Filter /FlateDecode /Length " + content.length() + " >>\nstream\n" + content + "\nendstream");
        }
        return file();
    }

    private String file() {
        StringBuilder file = new StringBuilder("%PDF-1.4\n%\u00e2\u00e3\u00cf\u00d3\n");
        StringBuilder places = new StringBuilder("0000000000 65535 f \n");
        for (int i = 0; i < objects.size(); i++) {
            places.append(String.format(Locale.ROOT, "%010d 00000 n \n", file.length()));
            file.append(i + 1).append(" 0 obj\n").append(objects.get(i)).append("\nendobj\n");
        }
        int start = file.length();
        int size = objects.size() + 1;
        return file.append("xref\n0 " + size + "\n")
                .append(places)
                .append("trailer\n<< /Size " + size + " /Root 1 0 R /Info 5 0 R >>\nstartxref\n" + start + "\n%%EOF\n")
                .toString();
    }

    private static String font(String name) {
        return "<< /Type /Font /Subtype /Type1 /BaseFont /" + name + " /Encoding /WinAnsiEncoding >>";
    }

    /** Text of one byte a character, deflated; so is what comes back. */
    private static String packed(String content) {
        byte[] plain = content.getBytes(StandardCharsets.ISO_8859_1);
        Deflater deflater = new Deflater();
        deflater.setInput(plain);
        deflater.finish();
        // The most that deflating adds to what it cannot shorten, and more.
        byte[] packed = new byte[plain.length + plain.length / 1000 + 64];
        int length = deflater.deflate(packed);
        deflater.end();
        return new String(packed, 0, length, StandardCharsets.ISO_8859_1);
    }

    /** In millimetres with y downwards, as the drawing is. */
    private String content(Drawing drawing) {
        double left = (paper.width() - drawing.width()) / 2;
        double top = (paper.height() - drawing.height()) / 2;
        StringBuilder content = new StringBuilder();
        content.append(number(POINTS_A_MILLIMETRE) + " 0 0 " + number(-POINTS_A_MILLIMETRE) + " "
                + number(left * POINTS_A_MILLIMETRE) + " " + number((paper.height() - top) * POINTS_A_MILLIMETRE)
                + " cm 1 J 1 j\n");
        drawing.shapes().forEach(shape -> content.append(drawn(shape)).append('\n'));
        return content.toString();
    }

    private static String drawn(Shape shape) {
        if (shape instanceof Shape.Line line) {
            String rest = line.points().stream()
                    .skip(1)
                    .map(point -> pair(point) + " l")
                    .collect(Collectors.joining(" "));
            return stroke(line.stroke()) + pair(line.points().get(0)) + " m " + rest + " S";
        } else if (shape instanceof Shape.Curve curve) {
            return stroke(curve.stroke()) + pair(curve.from()) + " m "
                    + pair(curve.from().towards(curve.bend(), 2.0 / 3)) + " "
                    + pair(curve.to().towards(curve.bend(), 2.0 / 3)) + " " + pair(curve.to()) + " c S";
        } else if (shape instanceof Shape.Box box) {
            return closed(
                    box.fill(),
                    box.edge(),
                    pair(box.corner()) + " " + number(box.width()) + " " + number(box.height()) + " re");
        } else if (shape instanceof Shape.Disc disc) {
            return closed(disc.fill(), disc.edge(), circle(disc.middle(), disc.radius()));
        } else if (shape instanceof Shape.Ring ring) {
            return stroke(ring.edge()) + circle(ring.middle(), ring.radius()) + " S";
        }
        return words((Shape.Words) shape);
    }

    private static String closed(Tint fill, Stroke edge, String path) {
        return colour(fill) + " rg " + (edge.width() > 0 ? stroke(edge) + path + " B" : path + " f");
    }

    private static String circle(Point middle, double radius) {
        double out = QUARTER * radius;
        return pair(middle.moved(radius, 0)) + " m "
                + quarter(middle.moved(radius, out), middle.moved(out, radius), middle.moved(0, radius))
                + quarter(middle.moved(-out, radius), middle.moved(-radius, out), middle.moved(-radius, 0))
                + quarter(middle.moved(-radius, -out), middle.moved(-out, -radius), middle.moved(0, -radius))
                + quarter(middle.moved(out, -radius), middle.moved(radius, -out), middle.moved(radius, 0)) + "h";
    }

    private static String quarter(Point leaving, Point arriving, Point end) {
        return pair(leaving) + " " + pair(arriving) + " " + pair(end) + " c ";
    }

    /** First its rim, where it has one, then the letters; the text's own axes point up again. */
    private static String words(Shape.Words words) {
        double width = TextWidth.of(words.text(), words.bold(), words.size());
        double back = words.anchor() == Anchor.START ? 0 : words.anchor() == Anchor.MIDDLE ? width / 2 : width;
        String place = "1 0 0 -1 " + pair(words.at().moved(-back, 0)) + " Tm ";
        String shown = literal(words.text()) + " Tj ";
        String rim = words.tint().equals(Tint.PAPER)
                ? ""
                : stroke(new Stroke(Tint.PAPER, Shape.Words.RIM * words.size())) + "1 Tr " + place + shown;
        return "BT /" + (words.bold() ? "F2 " : "F1 ") + number(words.size()) + " Tf " + rim + colour(words.tint())
                + " rg 0 Tr " + place + shown + "ET";
    }

    private static String stroke(Stroke stroke) {
        String dashes = stroke.dashes().stream().map(PdfDrawing::number).collect(Collectors.joining(" "));
        return colour(stroke.tint()) + " RG " + number(stroke.width()) + " w " + (dashes.isEmpty() ? 1 : 0) + " J ["
                + dashes + "] 0 d ";
    }

    private static String colour(Tint tint) {
        return IntStream.of(tint.rgb() >> 16, tint.rgb() >> 8 & 0xFF, tint.rgb() & 0xFF)
                .mapToObj(part -> number(part / 255.0))
                .collect(Collectors.joining(" "));
    }

    private static String pair(Point point) {
        return number(point.x()) + " " + number(point.y());
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value);
        return text.replaceFirst("\\.?0+$", "").replaceFirst("^-0$", "0");
    }

    /** A string object whose bytes, in Windows-1252, stand as characters of Latin-1; what could end it is escaped. */
    private static String literal(String text) {
        StringBuilder literal = new StringBuilder("(");
        for (byte each : text.getBytes(LETTERS)) {
            int code = each & 0xFF;
            if (code == '(' || code == ')' || code == '\\') {
                literal.append('\\');
            }
            literal.append(code < ' ' ? '?' : (char) code);
        }
        return literal.append(')').toString();
    }
}
