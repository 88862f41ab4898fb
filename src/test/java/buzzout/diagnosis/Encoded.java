package buzzout.diagnosis;

import buzzout.circuit.DiodeBypassed;
import buzzout.circuit.DiodeReversed;
import buzzout.circuit.Fault;
import buzzout.circuit.KeyOpen;
import buzzout.circuit.LeadOff;
import buzzout.circuit.LinkOpen;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.circuit.SwitchHeld;
import buzzout.plan.Key;
import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import buzzout.session.Observation.Hands;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.sat4j.core.VecInt;
import org.sat4j.maxsat.SolverFactory;
import org.sat4j.maxsat.WeightedMaxSatDecorator;
import org.sat4j.pb.OptToPBSATAdapter;
import org.sat4j.pb.PseudoOptDecorator;
import org.sat4j.specs.ContradictionException;
import org.sat4j.specs.IVecInt;
import org.sat4j.specs.TimeoutException;

/**
 * A called-through board as weighted MaxSAT: one variable for each fault, soft clauses for what each fault and each
 * slip costs.
 *
 * <p>A key is <i>joined</i> while neither it, nor a lead, nor a link between it and a lead is open. A joined key that is
 * not held answers forwards; backwards when its diode is reversed; both ways when that is bypassed. A joined, held key
 * conducts in the quiet check and adds nothing when pressed. That is all there is, as long as no held key shares a net
 * with a reversed or bypassed one, which is ruled out here: current would go round through both.
 */
final class Encoded {
    /** Weights are whole millionths. */
    private static final double SCALE = 1e6;

    private final Plan plan;
    private final List<Fault> faults;
    private final Map<Fault, Integer> variableOf = new HashMap<>();
    private final WeightedMaxSatDecorator solver = new WeightedMaxSatDecorator(SolverFactory.newDefault());
    private int variables;

    Encoded(Plan plan, Priors priors, Evidence evidence) throws ContradictionException {
        this.plan = plan;
        faults = OptimiserTest.encodable(plan);
        solver.newVar(
                faults.size() + 4 * plan.keys().size() + evidence.observations().size());
        for (Fault fault : faults) {
            variableOf.put(fault, ++variables);
        }
        for (Fault fault : faults) {
            soft(-priors.logOdds(fault.kind()), -variable(fault));
            exclude(fault);
        }
        write(evidence);
    }

    /** Without the held switches that share a net with a reversed or bypassed diode. */
    static List<Fault> apart(Plan plan, List<Fault> faults) {
        return faults.stream()
                .filter(fault -> !(fault instanceof SwitchHeld held)
                        || faults.stream()
                                .noneMatch(other -> turns(other)
                                        && share(
                                                plan,
                                                held.key(),
                                                other.onlyKey().orElseThrow())))
                .toList();
    }

    private static boolean turns(Fault fault) {
        return fault instanceof DiodeReversed || fault instanceof DiodeBypassed;
    }

    private static boolean share(Plan plan, int key, int other) {
        Key one = plan.keys().get(key);
        Key two = plan.keys().get(other);
        return one.row() == two.row() || one.column() == two.column();
    }

    private void exclude(Fault fault) throws ContradictionException {
        for (Fault other : faults) {
            boolean samePart =
                    variable(other) > variable(fault) && !java.util.Collections.disjoint(fault.parts(), other.parts());
            boolean goesRound = fault instanceof SwitchHeld held
                    && turns(other)
                    && share(plan, held.key(), other.onlyKey().orElseThrow());
            if (samePart || goesRound) {
                hard(-variable(fault), -variable(other));
            }
        }
    }

    private void write(Evidence evidence) throws ContradictionException {
        Pairs quiet = evidence.observations().get(0).seen();
        int[] joined = new int[plan.keys().size()];
        for (Key key : plan.keys()) {
            joined[key.index()] = joined(key);
            conductsUnpressed(key, quiet, joined[key.index()]);
        }
        for (Observation observation : evidence.observations()) {
            if (observation.hands() instanceof Hands.Meant press) {
                Key key = plan.keys().get(press.key());
                answers(key, observation.seen().minus(quiet), joined[key.index()]);
            }
        }
    }

    /** A variable that is true when nothing between the key's joints and the two pins is open. */
    private int joined(Key key) throws ContradictionException {
        List<Fault> opens = new ArrayList<>();
        opens.add(new KeyOpen(key.index()));
        for (NetKind kind : NetKind.values()) {
            int net = key.net(kind);
            opens.add(new LeadOff(net));
            Net chain = plan.nets().get(net);
            way(chain, chain.leadJoint(), -1, chain.jointOf(key.index()))
                    .forEach(link -> opens.add(
                            new LinkOpen(net, link, chain.links().get(link).jumper())));
        }
        int joined = ++variables;
        IVecInt unlessOpen = new VecInt().push(joined);
        for (Fault open : opens) {
            hard(-joined, -variable(open));
            unlessOpen.push(variable(open));
        }
        solver.addHardClause(unlessOpen);
        return joined;
    }

    /** The links passed on the way from one joint to another, without turning back; none when there is no way. */
    private static List<Integer> way(Net net, int from, int cameBy, int to) {
        List<Integer> way = new ArrayList<>();
        if (from != to) {
            for (int index = 0; index < net.links().size(); index++) {
                Link link = net.links().get(index);
                if (index == cameBy || (link.from() != from && link.to() != from)) {
                    continue;
                }
                int next = link.from() == from ? link.to() : link.from();
                List<Integer> rest = way(net, next, index, to);
                if (next == to || !rest.isEmpty()) {
                    way.add(index);
                    way.addAll(rest);
                    return way;
                }
            }
        }
        return way;
    }

    /** Where the quiet check has the key's pair, the key should be held and joined, else not both. */
    private void conductsUnpressed(Key key, Pairs quiet, int joined) throws ContradictionException {
        int held = variable(new SwitchHeld(key.index()));
        int conducts = ++variables;
        hard(-conducts, held);
        hard(-conducts, joined);
        hard(conducts, -held, -joined);
        soft(-Slips.MISREAD, quiet.contains(forwards(key)) ? conducts : -conducts);
    }

    /** A variable that can only be true where the key must give this answer; false costs a slip. */
    private void answers(Key key, Pairs seen, int joined) throws ContradictionException {
        int held = variable(new SwitchHeld(key.index()));
        int reversed = variable(new DiodeReversed(key.index()));
        int bypassed = variable(new DiodeBypassed(key.index()));
        Pairs forwards = Pairs.of(forwards(key));
        Pairs backwards = Pairs.of(forwards(key).turned());
        int as = ++variables;
        if (seen.isEmpty()) {
            hard(-as, -joined, held);
        } else {
            hard(-as, joined);
            hard(-as, -held);
            if (seen.equals(forwards)) {
                hard(-as, -reversed);
                hard(-as, -bypassed);
            } else if (seen.equals(backwards)) {
                hard(-as, reversed);
            } else if (seen.equals(forwards.plus(backwards))) {
                hard(-as, bypassed);
            } else {
                hard(-as);
            }
        }
        soft(-(seen.isEmpty() ? Slips.NO_PRESS : Slips.OTHER_ANSWER), as);
    }

    private Pair forwards(Key key) {
        return new Pair(key.net(plan.stripe()), key.net(plan.stripe().other()));
    }

    private int variable(Fault fault) {
        return Objects.requireNonNull(variableOf.get(fault), () -> fault + " is not encoded");
    }

    private void hard(int... literals) throws ContradictionException {
        solver.addHardClause(new VecInt(literals));
    }

    private void soft(double cost, int literal) throws ContradictionException {
        solver.addSoftClause(BigInteger.valueOf(Math.round(cost * SCALE)), new VecInt(new int[] {literal}));
    }

    /** The faults of the cheapest explanation. */
    List<Fault> solve() throws TimeoutException {
        OptToPBSATAdapter optimum = new OptToPBSATAdapter(new PseudoOptDecorator(solver));
        optimum.setTimeout(120);
        if (!optimum.isSatisfiable()) {
            throw new IllegalStateException("the encoding contradicts itself");
        }
        return faults.stream().filter(fault -> optimum.model(variable(fault))).toList();
    }
}
