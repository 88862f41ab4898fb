package buzzout.report;

import buzzout.probe.Printable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/** Proposed priors as the {@code [priors]} table of a plan, each with what it rests on. */
public final class PriorsToml {
    private static final MathContext DIGITS = new MathContext(3);

    private PriorsToml() {}

    /** TOML; comments where there is nothing to propose from. */
    public static String of(Batch batch) {
        int units = ProposedPrior.whole(batch).size();
        String board = Printable.of(batch.board());
        if (units == 0) {
            return "# No unit of " + board + " has been tested whole, so there is nothing to propose.\n";
        }
        StringBuilder toml = new StringBuilder();
        toml.append("# How probable one named fault of each kind is, proposed from ")
                .append(Wording.counted(units, "unit"))
                .append(" of ")
                .append(board)
                .append(",\n# tested whole: (1 + found) / (1/judged + places); behind each the judged value and the\n")
                .append("# 90 % interval of its beta distribution. Take this into the plan if it convinces you.\n")
                .append("[priors]\n");
        List<ProposedPrior> priors = ProposedPrior.of(batch);
        int width =
                priors.stream().mapToInt(prior -> setting(prior).length()).max().orElse(0);
        for (ProposedPrior prior : priors) {
            toml.append(String.format("%-" + width + "s", setting(prior)))
                    .append("  # ")
                    .append(prior.found())
                    .append(" found in ")
                    .append(prior.places())
                    .append("; judged ")
                    .append(number(prior.judged()))
                    .append("; ")
                    .append(number(prior.low()))
                    .append(" to ")
                    .append(number(prior.high()))
                    .append('\n');
        }
        return toml.toString();
    }

    private static String setting(ProposedPrior prior) {
        return prior.kind().code() + " = " + number(prior.proposed());
    }

    /** Three digits, without an exponent. */
    private static String number(double probability) {
        return new BigDecimal(probability).round(DIGITS).stripTrailingZeros().toPlainString();
    }
}
