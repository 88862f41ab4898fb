package buzzout.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.plan.PlanReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;

/** The files: what opens them, what is in them, and that no name spoils them. */
class WiringDrawingTest {
    private static final Path SMALL = Path.of("src/test/resources/buzzout/report/small-wiring.svg");
    private static final Plan QUAYSIDE = ExamplePlan.quayside();

    private static final Plan HOSTILE =
            PlanReader.read("""
            name = "<svg onload=x> & \\"(\\\\) --> "
            controller = "ATmega32U4"
            [rows]
            R1 = { pin = "D0", keys = "</text> &amp; (\\\\ ]]>" }
            R2 = { pin = "D1", keys = "→ é ヤ %s" }
            [columns]
            C1 = { pin = "D2", keys = "</text> →", colour = "<b>" }
            C2 = { pin = "D3", keys = "&amp; é" }
            C3 = { pin = "D4", keys = "(\\\\ ヤ" }
            C4 = { pin = "D5", keys = "]]> %s" }
            """, "hostile.toml").plan().orElseThrow();

    @Test
    void a_small_board_looks_as_it_did() throws IOException {
        String svg = new String(
                WiringDrawing.SVG.of(WiringPictureTest.small("row", "rows"), Paper.A4), StandardCharsets.UTF_8);
        if ("write".equals(System.getProperty("buzzout.pictures"))) {
            Files.createDirectories(SMALL.getParent());
            Files.writeString(SMALL, svg);
        }
        assertEquals(Files.readString(SMALL), svg);
    }

    @Test
    void svg_is_well_formed_and_holds_hostile_names_as_they_are() throws Exception {
        Document svg = xml(WiringDrawing.SVG.of(HOSTILE, Paper.A4));
        List<String> texts = texts(svg);
        for (Key key : HOSTILE.keys()) {
            assertTrue(texts.contains(key.name()), key.name() + texts);
        }
        assertEquals(1, svg.getElementsByTagName("svg").getLength());
    }

    @Test
    void html_escapes_hostile_names_and_needs_nothing_from_outside() {
        String html = new String(WiringDrawing.HTML.of(HOSTILE, Paper.LETTER), StandardCharsets.UTF_8);
        assertFalse(html.contains("<svg onload"), html);
        assertFalse(html.contains("</text> "), "a key's name ended a text");
        assertFalse(html.toLowerCase(Locale.ROOT).matches("(?s).*(<script|src=|<link|@import|url\\().*"), html);
        assertTrue(html.contains("size: letter landscape"));
        int boxes = html.split("type=\"checkbox\"", -1).length - 1;
        int joints = 16;
        int leads = 6;
        assertTrue(boxes > joints + leads, "boxes: " + boxes);
    }

    @ParameterizedTest
    @EnumSource
    void a_pdf_opens_with_a_page_for_each_sheet_of_the_papers_size(Paper paper) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(WiringDrawing.PDF.of(QUAYSIDE, paper))) {
            assertEquals(WiringSheets.of(QUAYSIDE).size(), pdf.getNumberOfPages());
            pdf.getPages().forEach(page -> {
                assertEquals(paper.width(), page.getMediaBox().getWidth() / 72 * 25.4, 0.01);
                assertEquals(paper.height(), page.getMediaBox().getHeight() / 72 * 25.4, 0.01);
            });
            String text = new PDFTextStripper().getText(pdf);
            for (String word : List.of("R3.8", "C12.4", "pin E6", "turquoise", "solder side", "Leads", "0.99 m")) {
                assertTrue(text.contains(word), word);
            }
            assertEquals("Quayside 46: wiring", pdf.getDocumentInformation().getTitle());
        }
    }

    @Test
    void a_pdf_shows_letters_that_its_faces_lack_as_code_points() throws IOException {
        assertEquals(List.of("→", "ヤ"), WiringDrawing.PDF.changedNames(HOSTILE));
        assertEquals(List.of(), WiringDrawing.SVG.changedNames(HOSTILE));
        try (PDDocument pdf = Loader.loadPDF(WiringDrawing.PDF.of(HOSTILE, Paper.A4))) {
            String text = new PDFTextStripper().getText(pdf);
            for (String name : List.of("U+2192", "U+30E4", "é", "</text>", "(\\", "<svg onload=x> & \"(\\) -->")) {
                assertTrue(text.contains(name), name + " is not in " + text);
            }
        }
    }

    @Test
    void every_sheet_fits_both_papers_and_nothing_lies_outside() {
        for (Plan plan : List.of(QUAYSIDE, HOSTILE, WiringPictureTest.small("column", "columns"))) {
            for (Drawing sheet : WiringSheets.of(plan)) {
                for (Paper paper : Paper.values()) {
                    assertTrue(paper.width() - sheet.width() >= 20, paper + " width");
                    assertTrue(paper.height() - sheet.height() >= 20, paper + " height");
                }
                sheet.shapes().stream()
                        .filter(shape -> shape instanceof Shape.Words)
                        .map(shape -> (Shape.Words) shape)
                        .forEach(words -> {
                            double width = TextWidth.of(words.text(), words.bold(), words.size());
                            double left = switch (words.anchor()) {
                                case START -> words.at().x();
                                case MIDDLE -> words.at().x() - width / 2;
                                case END -> words.at().x() - width;
                            };
                            assertTrue(
                                    left >= -0.01
                                            && left + width <= sheet.width() + 0.01
                                            && words.at().y() > 0
                                            && words.at().y() <= sheet.height(),
                                    words.text());
                        });
            }
        }
    }

    /** PDFBox carries the published metrics of the standard faces. */
    @Test
    void text_is_as_wide_as_the_standard_face_says() throws IOException {
        PDFont plain = new PDType1Font(FontName.HELVETICA);
        PDFont bold = new PDType1Font(FontName.HELVETICA_BOLD);
        for (int point : IntStream.rangeClosed(' ', '~').toArray()) {
            String letter = Character.toString(point);
            assertEquals(plain.getStringWidth(letter), TextWidth.of(letter, false, 1000), 0.01, letter);
        }
        assertEquals(plain.getStringWidth("é Ä ñ"), TextWidth.of("é Ä ñ", false, 1000), 0.01);
        for (Key key : QUAYSIDE.keys()) {
            double width = bold.getStringWidth(key.name());
            double assumed = TextWidth.of(key.name(), true, 1000);
            assertEquals(width, assumed, 0.25 * width, key.name());
        }
    }

    private static List<String> texts(Document svg) {
        var texts = svg.getElementsByTagName("text");
        return IntStream.range(0, texts.getLength())
                .mapToObj(i -> texts.item(i).getTextContent())
                .toList();
    }

    private static Document xml(byte[] file) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(file));
    }
}
