package buzzout.report;

import buzzout.circuit.RiseTimes;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.IntStream;

/** How long a plan's pins took to rise, and what that hints at. It hints; only a press proves. */
public final class RiseText {
    /** Of what the others of its kind let expect. Judgement: wires differ in length, a lead that is off differs more. */
    private static final double FAR_SOONER = 0.6;

    /** Of fewer nets of a kind nobody can say which is the odd one. */
    private static final int FEWEST_OF_A_KIND = 3;

    private final Plan plan;
    private final List<OptionalLong> nanos;
    private final Page page;

    private RiseText(Plan plan, List<OptionalLong> nanos, boolean ascii) {
        this.plan = plan;
        this.nanos = nanos;
        page = new Page(ascii);
    }

    /**
     * A table and its hints, in lines of at most 80 columns.
     *
     * @param nanos by pin, in the plan's order; none for a pin that does not rise
     * @param settleMicros the settle time that the probe takes for these rises by itself
     */
    public static String of(Plan plan, List<OptionalLong> nanos, int settleMicros, boolean ascii) {
        return new RiseText(plan, nanos, ascii).written(settleMicros);
    }

    private String written(int settleMicros) {
        page.paragraph(String.format(Locale.ROOT, "%-8s%-14s%6s  %s", "pin", "net", "joints", "rises in"));
        for (int pin = 0; pin < nanos.size(); pin++) {
            row(pin);
        }
        List<String> hints = IntStream.range(0, plan.nets().size())
                .mapToObj(this::hint)
                .flatMap(Optional::stream)
                .toList();
        hints.forEach(hint -> page.gap().paragraph("Hint: ", hint));
        page.gap()
                .paragraph("`run --settle auto` waits " + settleMicros
                        + " µs with these: twice the slowest, at least 5 µs.");
        return page.toString();
    }

    private void row(int pin) {
        boolean isNet = pin < plan.nets().size();
        String net = isNet ? spoken(plan.nets().get(pin)) : "flying lead";
        String joints = isNet ? String.valueOf(plan.nets().get(pin).joints().size()) : "";
        String rises = nanos.get(pin).isPresent()
                ? micros(nanos.get(pin).getAsLong())
                : "does not rise: something holds it low";
        page.paragraph(
                String.format(Locale.ROOT, "%-8s%-14s%6s  %s", plan.pins().get(pin), net, joints, rises));
    }

    private Optional<String> hint(int pin) {
        OptionalDouble expected = expected(plan.nets().get(pin));
        OptionalLong took = nanos.get(pin);
        if (expected.isEmpty() || took.isEmpty() || took.getAsLong() >= FAR_SOONER * expected.getAsDouble()) {
            return Optional.empty();
        }
        Net net = plan.nets().get(pin);
        return Optional.of(spoken(net) + " rises in " + micros(took.getAsLong()) + ", and as the other "
                + net.kind().word() + "s do it should take " + micros(Math.round(expected.getAsDouble()))
                + ": there is little wire on " + net.pin()
                + ". Its lead, or a link close to the pin, may be open. A press"
                + " of each of its keys will tell.");
    }

    /** What the middle one of its kind lets expect of a net with so many joints. */
    private OptionalDouble expected(Net net) {
        List<Double> ofKind = new ArrayList<>();
        for (int pin = 0; pin < plan.nets().size(); pin++) {
            Net other = plan.nets().get(pin);
            if (other.kind() == net.kind() && nanos.get(pin).isPresent()) {
                ofKind.add(nanos.get(pin).getAsLong() / planned(other));
            }
        }
        ofKind.sort(null);
        return ofKind.size() < FEWEST_OF_A_KIND
                ? OptionalDouble.empty()
                : OptionalDouble.of(ofKind.get(ofKind.size() / 2) * planned(net));
    }

    private static double planned(Net net) {
        return RiseTimes.planned(net.joints().size());
    }

    private static String spoken(Net net) {
        return net.kind().word() + " " + net.name();
    }

    private static String micros(long nanos) {
        return String.format(Locale.ROOT, "%.1f µs", nanos / 1000.0);
    }
}
