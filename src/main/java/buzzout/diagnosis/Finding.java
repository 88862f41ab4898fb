package buzzout.diagnosis;

import java.util.List;
import java.util.Optional;

/**
 * A fault, or several that the evidence cannot tell apart.
 *
 * @param suspects that predict the same of everything seen, most probable first, at least one
 * @param otherwise what else it might be: suspects that account for the evidence less well
 * @param probability that one of the suspects is so
 * @param because sentences: what was seen that says so
 * @param settle what to do next to tell the suspects apart, where there are several or doubt remains
 */
public record Finding(
        List<Suspect> suspects,
        List<Suspect> otherwise,
        double probability,
        List<String> because,
        Optional<String> settle) {
    public Finding {
        suspects = List.copyOf(suspects);
        otherwise = List.copyOf(otherwise);
        because = List.copyOf(because);
    }

    /** Less probable by a factor, with all its suspects. */
    Finding discounted(double factor) {
        return factor == 1
                ? this
                : new Finding(
                        suspects.stream().map(each -> each.discounted(factor)).toList(),
                        otherwise.stream().map(each -> each.discounted(factor)).toList(),
                        probability * factor,
                        because,
                        settle);
    }

    public Suspect first() {
        return suspects.get(0);
    }
}
