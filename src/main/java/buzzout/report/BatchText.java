package buzzout.report;

import buzzout.session.KeyState;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A batch as plain text: where each unit stands, what was found how often, and what failed again. */
public final class BatchText {
    private final Batch batch;
    private final Page page;

    private BatchText(Batch batch, boolean ascii) {
        this.batch = batch;
        this.page = new Page(ascii);
    }

    /** Lines of at most 80 columns. */
    public static String of(Batch batch, boolean ascii) {
        return new BatchText(batch, ascii).written();
    }

    private String written() {
        page.paragraph(batch.board() + ": " + Wording.counted(batch.units().size(), "unit") + " tested, "
                + batch.passed()
                + " passed, " + batch.count(UnitHistory.Standing.PASSED_AT_FIRST_TRY) + " of them at first try, "
                + batch.count(UnitHistory.Standing.OPEN) + " open.");
        int width = batch.units().stream()
                .mapToInt(unit -> unit.unit().length())
                .max()
                .orElse(0);
        batch.units().forEach(unit -> unit(unit, width));
        if (!batch.faultsByKind().isEmpty()) {
            page.gap()
                    .paragraph(
                            "Faults by kind: ",
                            batch.faultsByKind().entrySet().stream()
                                    .map(entry -> entry.getKey().code() + " " + entry.getValue())
                                    .collect(Collectors.joining(", ")));
        }
        if (!batch.again().isEmpty()) {
            page.gap().paragraph("Failing again");
            batch.again()
                    .forEach(place -> page.paragraph(
                            "  " + place.times() + " times: ", place.says() + "; " + String.join(", ", place.units())));
        }
        if (!batch.unmarked().isEmpty()) {
            page.gap()
                    .paragraph(
                            "Not counted, because they name no unit (`run --unit MARK`): ",
                            2,
                            batch.unmarked().stream().map(WeighedLog::name).collect(Collectors.joining(", ")));
        }
        return page.toString();
    }

    private void unit(UnitHistory unit, int width) {
        String mark = String.format("%-" + Math.max(1, width) + "s", unit.unit());
        List<String> says = new ArrayList<>();
        says.add(unit.standing().words() + (unit.standing() == UnitHistory.Standing.OPEN ? why(unit) : ""));
        says.add(Wording.counted(unit.sessions().size(), "session"));
        unit.last().started().ifPresent(at -> says.add("last " + Wording.time(at)));
        page.paragraph("  " + mark + "  ", String.join("; ", says));
        unit.faults()
                .forEach(fault -> page.paragraph(
                        "  " + " ".repeat(width) + "  - ",
                        fault.says()
                                + (fault.settled() ? "" : Wording.OR_ALIKE)
                                + (fault.times() > 1 ? ", " + fault.times() + " times" : "")));
    }

    private static String why(UnitHistory unit) {
        List<String> why = new ArrayList<>();
        int findings = unit.last().outcome().diagnosis().findings().size();
        if (findings > 0) {
            why.add(Wording.counted(findings, "finding"));
        }
        if (!unit.notGood().isEmpty()) {
            why.add(Wording.counted(unit.notGood().size(), "key") + " not good");
        }
        if (!unit.keys(KeyState.UNTESTED).isEmpty()) {
            why.add(Wording.counted(unit.keys(KeyState.UNTESTED).size(), "key") + " untested");
        }
        return why.isEmpty() ? "" : ", " + String.join(", ", why);
    }
}
