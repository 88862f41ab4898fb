package buzzout.report;

import buzzout.plan.Plan;
import buzzout.plan.Side;
import buzzout.report.Checklist.Section;
import buzzout.report.Checklist.Step;
import java.util.stream.Stream;

/** A wiring drawing as one page of HTML: no script, nothing fetched, boxes that can be ticked on screen or on paper. */
final class WiringHtml {
    private static final String STYLE = """
            @page { size: %s landscape; margin: 10mm; }
            body { font-family: Helvetica, Arial, 'Liberation Sans', sans-serif; color: #1e2226; background: #fff;
              margin: 0 auto; max-width: 259mm; line-height: 1.4; }
            svg { display: block; width: 100%%; height: auto; break-after: page; margin-bottom: 5mm; }
            h1 { font-size: 16pt; margin: 5mm 0 2mm; }
            h2 { font-size: 13pt; margin: 5mm 0 1mm; break-after: avoid; }
            p { margin: 1mm 0; }
            section > div { break-inside: avoid; margin: 2mm 0; }
            label { display: inline-block; margin-right: 4mm; white-space: nowrap; }
            @media screen { body { padding: 5mm; } label { white-space: normal; } }
            """;

    private final StringBuilder html = new StringBuilder();

    private WiringHtml() {}

    static String of(Plan plan, Paper paper) {
        return new WiringHtml().written(plan, paper);
    }

    private String written(Plan plan, Paper paper) {
        String title = plan.name() + ": wiring";
        add("<!DOCTYPE html>");
        add("<html lang=\"en\">");
        add("<head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\">");
        add("<title>" + SvgDrawing.escaped(title) + "</title>");
        add("<style>\n" + STYLE.formatted(paper.css()) + "</style></head>");
        add("<body>");
        Stream.of(Side.values())
                .forEach(side ->
                        add(SvgDrawing.element(WiringSheets.side(plan, side), plan.name() + ", " + side.words())));
        add("<main><h1>" + SvgDrawing.escaped(plan.name()) + ": soldering checklist</h1>");
        SolderingOrder.of(plan).sections().forEach(this::section);
        add("</main></body></html>");
        return html.toString();
    }

    private void section(Section section) {
        add("<section><h2>" + SvgDrawing.escaped(section.title()) + "</h2>");
        section.says().forEach(says -> add("<p>" + SvgDrawing.escaped(says) + "</p>"));
        section.steps().forEach(step -> step(section, step));
        add("</section>");
    }

    private void step(Section section, Step step) {
        add("<div>");
        if (section.steps().size() > 1) {
            add("<b>" + SvgDrawing.escaped(step.title()) + "</b> " + SvgDrawing.escaped(step.says()) + "<br>");
        }
        step.boxes().forEach(box -> add("<label><input type=\"checkbox\"> " + SvgDrawing.escaped(box) + "</label>"));
        add("</div>");
    }

    private void add(String line) {
        html.append(line).append('\n');
    }
}
