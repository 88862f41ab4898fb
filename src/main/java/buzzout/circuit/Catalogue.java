package buzzout.circuit;

import buzzout.plan.Plan;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Every fault that can be supposed of a plan's board. */
public final class Catalogue {
    private Catalogue() {}

    public static List<Fault> of(Plan plan) {
        return Stream.of(FaultKind.values()).flatMap(kind -> kind.all(plan)).toList();
    }

    /** The fault with this code; a code cut short before a colon means the first that it begins. */
    public static Optional<Fault> find(Plan plan, String code) {
        String firstWord = code.split(":", 2)[0];
        List<Fault> all = Stream.of(FaultKind.values())
                .filter(kind -> kind.code().equals(firstWord))
                .flatMap(kind -> kind.all(plan))
                .toList();
        return all.stream()
                .filter(fault -> fault.code(plan).equals(code))
                .findFirst()
                .or(() -> all.stream()
                        .filter(fault -> fault.code(plan).startsWith(code + ":"))
                        .findFirst());
    }
}
