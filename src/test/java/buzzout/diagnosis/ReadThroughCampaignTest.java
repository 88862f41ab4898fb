package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Fault;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.session.Session;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Boards read through with one slip of the finger in 40 keys, against the same boards called through without a slip.
 *
 * <p>Seconds are judgement: 0.4 for a press of a person who reads through and never looks up, 1.5 for a called one.
 */
class ReadThroughCampaignTest {
    private static final Plan PLAN = ExamplePlan.quayside();
    private static final Priors PRIORS = Priors.judged();
    private static final int KEYS_A_SLIP = 40;
    private static final int MOST_ROUNDS = 5;
    private static final double SECONDS_READ = 0.4;
    private static final double SECONDS_CALLED = 1.5;

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void a_read_through_finds_what_a_roll_call_finds(int faults) {
        int boards = Campaign.size(12, 500);
        int same = 0;
        int sameAfterAll = 0;
        double seconds = 0;
        int again = 0;
        List<String> otherwise = new ArrayList<>();
        for (int board = 0; board < boards; board++) {
            long seed = 100L * board + faults;
            Random random = new Random(seed);
            List<Fault> truth = Campaign.likelyFaults(random, PLAN, PRIORS, faults);
            List<Integer> order = Reader.fingers(random, PLAN, KEYS_A_SLIP);
            Set<Set<String>> called = found(new Engine(PLAN).weigh(RollCall.complete(PLAN, truth)));
            Reader reader = new Reader(PLAN, truth);
            Session read = reader.readThrough(order);
            Diagnosis first = new Engine(PLAN).weigh(read.evidence());
            same += found(first).equals(called) ? 1 : 0;
            seconds += order.size() * SECONDS_READ;
            Diagnosis last = first;
            for (int round = 0; round < MOST_ROUNDS && !last.again().isEmpty(); round++) {
                again += last.again().size();
                seconds += last.again().size() * SECONDS_CALLED;
                last.again().forEach(reader::pressCalled);
                last = new Engine(PLAN).weigh(reader.session().evidence());
            }
            if (found(last).equals(called)) {
                sameAfterAll++;
            } else {
                otherwise.add("seed " + seed + " " + Campaign.codes(PLAN, truth) + ": called " + called + ", read "
                        + found(last));
            }
        }
        double rollCall = PLAN.keys().size() * SECONDS_CALLED;
        System.out.printf(
                "%d boards with %d faults (seeds 100 n + %d), a slip in %d keys: findings as of a roll call on %.1f %%;"
                        + " after %.2f more presses a board, of keys in doubt, on %.1f %%; %.0f s against %.0f%n",
                boards,
                faults,
                faults,
                KEYS_A_SLIP,
                100.0 * same / boards,
                (double) again / boards,
                100.0 * sameAfterAll / boards,
                seconds / boards,
                rollCall);
        otherwise.forEach(System.out::println);
        assertTrue(sameAfterAll >= 0.8 * boards, () -> String.join("\n", otherwise));
    }

    /** The suspects of each finding that is more probable than not. */
    private static Set<Set<String>> found(Diagnosis diagnosis) {
        Set<Set<String>> found = new HashSet<>();
        for (Finding finding : diagnosis.findings()) {
            if (finding.probability() >= 0.5) {
                found.add(finding.suspects().stream()
                        .map(suspect -> suspect.fault().code(PLAN))
                        .collect(Collectors.toSet()));
            }
        }
        return found;
    }
}
