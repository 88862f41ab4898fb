package buzzout.report;

import buzzout.journal.SessionLog;
import java.util.List;

/** A report in its short form: plain text to paste into a message. */
public final class ReportText {
    private ReportText() {}

    /**
     * Lines of at most 80 columns.
     *
     * @param program the version of the program that writes it
     */
    public static String of(SessionLog log, Outcome outcome, boolean ascii, String program) {
        Page page = new Page(ascii);
        List<String> repairs = new RepairsSection(log).lines();
        if (!repairs.isEmpty()) {
            page.gap().paragraph("Repairs and notes");
            repairs.forEach(line -> page.paragraph("  - ", line));
        }
        page.gap();
        SessionText.facts(log, outcome.session()).forEach(fact -> page.paragraph(fact.label() + ": ", fact.says()));
        page.paragraph("Program: Buzzout " + program
                + log.header()
                        .program()
                        .filter(wrote -> !wrote.equals(program))
                        .map(wrote -> "; the log was written by " + wrote)
                        .orElse(""));
        return FindingsText.of(outcome, ascii) + page;
    }
}
