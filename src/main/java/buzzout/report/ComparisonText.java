package buzzout.report;

import buzzout.session.KeyState;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** A comparison as plain text. */
public final class ComparisonText {
    private final Comparison comparison;
    private final boolean ascii;
    private final Page page;

    private ComparisonText(Comparison comparison, boolean ascii) {
        this.comparison = comparison;
        this.ascii = ascii;
        this.page = new Page(ascii);
    }

    /** Lines of at most 80 columns. */
    public static String of(Comparison comparison, boolean ascii) {
        return new ComparisonText(comparison, ascii).written();
    }

    private String written() {
        page.paragraph("Before: ", told(comparison.before()));
        page.paragraph("After:  ", told(comparison.after()));
        comparison.remarks().forEach(remark -> page.paragraph("Note: ", remark));
        page.gap();
        findings("Fixed:  ", comparison.fixed());
        findings("Left:   ", comparison.left());
        findings("Broken: ", comparison.broken());
        findings("Open:   ", comparison.unproven(), ", not all of it pressed again");
        if (comparison.fixed().isEmpty()
                && comparison.left().isEmpty()
                && comparison.broken().isEmpty()
                && comparison.unproven().isEmpty()) {
            page.paragraph("Neither session has a finding.");
        }
        if (!comparison.keys().isEmpty()) {
            page.gap();
            keys("Keys fixed: ", Comparison.KeyChange::isFixed);
            keys("Keys left:  ", Comparison.KeyChange::isLeft);
            keys("Keys broken: ", Comparison.KeyChange::isBroken);
            keys("Newly tested: ", change -> change.before() == KeyState.UNTESTED && change.isTestedAfter());
            keys("Not pressed again: ", change -> !change.isTestedAfter());
        }
        return page.toString();
    }

    private static String told(WeighedLog log) {
        return Wording.heading(log.outcome()) + ": " + Wording.verdict(log.outcome());
    }

    private void findings(String label, List<Comparison.Named> findings) {
        findings(label, findings, "");
    }

    private void findings(String label, List<Comparison.Named> findings, String addition) {
        findings.forEach(finding -> page.paragraph(
                label,
                Wording.sentence(
                        comparison.after().outcome().plan(),
                        finding.says() + (finding.settled() ? "" : Wording.OR_ALIKE) + addition)));
    }

    private void keys(String label, Predicate<Comparison.KeyChange> which) {
        List<Comparison.KeyChange> changes =
                comparison.keys().stream().filter(which).toList();
        if (!changes.isEmpty()) {
            page.paragraph(label, 2, changes.stream().map(this::told).collect(Collectors.joining("  ")));
        }
    }

    /** The key, and its state where that is not good. */
    private String told(Comparison.KeyChange change) {
        KeyState state = change.isTestedAfter() ? change.after() : change.before();
        return change.key() + (state == KeyState.GOOD ? "" : " " + state.mark(ascii));
    }
}
