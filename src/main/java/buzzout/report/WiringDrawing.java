package buzzout.report;

import buzzout.plan.Plan;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A plan's wiring drawing as a file: both sides of the board, and the checklist with parts and wire. */
public enum WiringDrawing {
    /** All sheets below each other. */
    SVG,
    /** One page to read, tick and print. */
    HTML,
    /** A page for each sheet. */
    PDF;

    /** The one that a file's name ends with. */
    public static Optional<WiringDrawing> named(String file) {
        String name = file.toLowerCase(Locale.ROOT);
        return Stream.of(values())
                .filter(each -> name.endsWith("." + each.suffix()))
                .findFirst();
    }

    private String suffix() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The file's content. */
    public byte[] of(Plan plan, Paper paper) {
        String title = plan.name() + ": wiring";
        return switch (this) {
            case SVG ->
                SvgDrawing.file(WiringSheets.stacked(WiringSheets.of(plan)), title)
                        .getBytes(StandardCharsets.UTF_8);
            case HTML -> WiringHtml.of(plan, paper).getBytes(StandardCharsets.UTF_8);
            case PDF -> {
                Plan shown = PdfNames.shown(plan);
                yield PdfDrawing.file(WiringSheets.of(shown), paper, shown.name() + ": wiring");
            }
        };
    }

    /** The plan's names that this form cannot show as they are. */
    public List<String> changedNames(Plan plan) {
        return this == PDF ? PdfNames.changed(plan) : List.of();
    }
}
