package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.Layout;
import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import buzzout.session.Observation.Hands;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Faults that disguise each other on {@code Quayside 46}, each found as what it is.
 *
 * <p>The findings are held to {@code disguises.txt}, a line for each: its probability, its suspects with theirs, after a
 * stroke what it might be otherwise. {@code mvn test -Dtest=DisguisesTest -Dbuzzout.golden=write} writes the file anew.
 * Held apart from it, so that it cannot be written away: every true fault that the evidence speaks for is named, and no
 * explanation is less probable than the truth.
 */
class DisguisesTest {
    private static final Path GOLDEN = Path.of("src/test/resources/buzzout/diagnosis/disguises.txt");
    private static final Plan QUAYSIDE = ExamplePlan.quayside();
    private static final Fault LOW = fault("pin-low:C7");

    /** How it was pressed, and how doubtful levels read. */
    private enum Way {
        ROLL_CALL,
        FREE_PLAY,
        ROLL_CALL_DOUBTFUL_LOW,
        HALF_CALLED
    }

    private record Disguise(String name, Way way, List<Fault> faults) {
        /** The true faults without which the evidence would be less likely; one beyond a break shows nothing. */
        List<Fault> seen(Evidence evidence) {
            if (way == Way.ROLL_CALL_DOUBTFUL_LOW) {
                return List.of(LOW); // A loaded pin that always reads low is, for all that can be seen, held low.
            }
            return faults.stream()
                    .filter(fault -> likelihood(evidence, faults)
                            > likelihood(
                                            evidence,
                                            faults.stream()
                                                    .filter(other -> !other.equals(fault))
                                                    .toList())
                                    + 1e-9)
                    .toList();
        }

        private static double likelihood(Evidence evidence, List<Fault> faults) {
            return new PlainModel(QUAYSIDE, evidence)
                    .logLikelihood(PlainModel.Shown.by(new Layout(QUAYSIDE), QUAYSIDE, faults));
        }
    }

    private static List<Disguise> disguises() {
        return Stream.of(
                        of("an open column whose far part is bridged to its neighbour", "open:C2:A:Z bridge:C2:C3:Z:X"),
                        of("two breaks in one row", "open:R1:W:E open:R1:U:I"),
                        of("a bypassed diode behind held keys", "bypassed:F held:J held:V"),
                        of("a swapped pair of leads and a dead key", "swapped:C3:C4 dead:D"),
                        of("a bridge between a row and a column", "crossing:R2:C5:F"),
                        of("a reversed key on an open row", "reversed:K open:R2:K:L"),
                        of("the mirrored board with one fault", "mirrored open:R3:X:C"),
                        of("a pin that cannot rise because of a LED", "pin-dragged:C7"),
                        of("the same where its level always reads low", Way.ROLL_CALL_DOUBTFUL_LOW, "pin-dragged:C7"),
                        of("a lead off a bridged column", "lead-off:C8 bridge:C8:C9:U:I"),
                        of("two neighbours each wired to the other's column", "wrong-net:E:C3 wrong-net:W:C4"),
                        of("turned stripes with one diode the old way", "turned reversed:S"),
                        of("a row that hangs on its neighbour", "lead-off:R4 bridge:R3:R4:Z:Log"),
                        of("a held key that hides a dead one on its row", "held:A dead:G"),
                        of("two reversed keys at opposite corners", "reversed:Esc reversed:Right"),
                        of("a jumper off and the far part bridged", "jumper-off:R2:G:H bridge:R2:R3:J:M"),
                        of("a dead key beyond a break", "open:C12:Up:Right dead:Back"),
                        of("two columns exchanged across the board", "far-swapped:C1:C12"),
                        of("a break and a dead key in free play", Way.FREE_PLAY, "open:C6:G:B dead:E"),
                        of("a break with half the board untried", Way.HALF_CALLED, "open:R1:R:T"))
                .toList();
    }

    private static Disguise of(String name, String codes) {
        return of(name, Way.ROLL_CALL, codes);
    }

    private static Disguise of(String name, Way way, String codes) {
        List<Fault> faults =
                Arrays.stream(codes.split(" ", -1)).map(DisguisesTest::fault).toList();
        return new Disguise(name, way, faults);
    }

    private static Fault fault(String code) {
        return Catalogue.find(QUAYSIDE, code).orElseThrow(() -> new AssertionError("no fault " + code));
    }

    @Test
    void every_disguise_is_seen_through() throws IOException {
        StringBuilder found = new StringBuilder();
        List<String> missed = new ArrayList<>();
        for (Disguise disguise : disguises()) {
            Evidence evidence = evidence(disguise);
            Engine engine = new Engine(QUAYSIDE);
            Diagnosis diagnosis = engine.weigh(evidence);
            double lacks = score(evidence, disguise.faults()) - score(evidence, engine.explanation());
            if (lacks > 1e-6) {
                missed.add(String.format(
                        "%s: the truth %s is more probable by e^%.2f than %s",
                        disguise.name(),
                        Campaign.codes(QUAYSIDE, disguise.faults()),
                        lacks,
                        Campaign.codes(QUAYSIDE, engine.explanation())));
            }
            found.append(disguise.name() + "\n  " + disguise.way() + " of "
                    + Campaign.codes(QUAYSIDE, disguise.faults()) + "\n");
            diagnosis
                    .findings()
                    .forEach(finding -> found.append("  ").append(line(finding)).append('\n'));
            diagnosis
                    .troubles()
                    .forEach(trouble ->
                            found.append("  doubtful: ").append(trouble).append('\n'));
            disguise.seen(evidence).stream()
                    .filter(fault -> diagnosis.findings().stream().noneMatch(finding -> names(finding, fault)))
                    .forEach(fault -> missed.add(disguise.name() + ": " + fault.code(QUAYSIDE) + " is not named"));
        }
        if ("write".equals(System.getProperty("buzzout.golden"))) {
            Files.createDirectories(GOLDEN.getParent());
            Files.writeString(GOLDEN, found);
        }
        assertEquals(List.of(), missed, () -> String.join("\n", missed));
        assertEquals(Files.readString(GOLDEN), found.toString());
        assertTrue(disguises().size() >= 18);
    }

    private static double score(Evidence evidence, List<Fault> faults) {
        return PlainModel.score(QUAYSIDE, Priors.judged(), evidence, faults);
    }

    private static boolean names(Finding finding, Fault fault) {
        return Stream.concat(finding.suspects().stream(), finding.otherwise().stream())
                .anyMatch(suspect -> suspect.fault().equals(fault));
    }

    private static String line(Finding finding) {
        return String.format(
                "%.3f %s%s",
                finding.probability(),
                listed(finding.suspects()),
                finding.otherwise().isEmpty() ? "" : " / " + listed(finding.otherwise()));
    }

    private static String listed(List<Suspect> suspects) {
        return suspects.stream()
                .map(suspect -> String.format("%s %.3f", suspect.fault().code(QUAYSIDE), suspect.probability()))
                .collect(Collectors.joining(", "));
    }

    private static Evidence evidence(Disguise disguise) {
        return switch (disguise.way()) {
            case ROLL_CALL -> RollCall.complete(QUAYSIDE, disguise.faults());
            case FREE_PLAY -> RollCall.freePlay(QUAYSIDE, disguise.faults());
            case ROLL_CALL_DOUBTFUL_LOW -> doubtfulLow(disguise.faults());
            case HALF_CALLED -> {
                Evidence whole = RollCall.complete(QUAYSIDE, disguise.faults());
                yield new Evidence(
                        whole.observations().subList(0, whole.observations().size() / 2));
            }
        };
    }

    private static Evidence doubtfulLow(List<Fault> faults) {
        Circuit circuit = Circuit.of(QUAYSIDE, faults);
        Pairs quiet = lowest(circuit.quiet());
        List<Observation> observations = new ArrayList<>();
        observations.add(new Observation(new Hands.Off(), quiet));
        for (Key key : QUAYSIDE.keys()) {
            observations.add(new Observation(new Hands.Meant(key.index()), quiet.plus(lowest(circuit.pressed(key)))));
        }
        return new Evidence(observations);
    }

    private static Pairs lowest(Reading reading) {
        return reading.low().plus(reading.between());
    }
}
