package buzzout.circuit;

import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import java.util.List;
import java.util.Set;

/** The board was wired from behind as if from the front: the column leads run in the opposite order. */
public record MirrorImage() implements Fault {
    static List<Fault> all(Plan plan) {
        return plan.nets(NetKind.COLUMN).size() > 2 ? List.of(new MirrorImage()) : List.of();
    }

    @Override
    public FaultKind kind() {
        return FaultKind.MIRROR_IMAGE;
    }

    @Override
    public void change(Wiring wiring) {
        int first = wiring.plan().nets(NetKind.ROW).size();
        int last = wiring.plan().nets().size() - 1;
        for (int net = first, other = last; net < other; net++, other--) {
            wiring.swapLeads(net, other);
        }
    }

    @Override
    public List<Part> parts() {
        return List.of(Part.Whole.SIDES);
    }

    @Override
    public Set<Integer> nets(Plan plan) {
        return plan.netIndices();
    }

    @Override
    public String code(Plan plan) {
        return kind().code();
    }

    @Override
    public String says(Plan plan) {
        return "the whole board is wired as its mirror image";
    }

    @Override
    public String meter(Plan plan) {
        var columns = plan.nets(NetKind.COLUMN);
        return "from controller pin " + columns.get(0).pin() + " to "
                + columns.get(columns.size() - 1).name() + ": a beep means that the board is mirrored";
    }

    @Override
    public String repair(Plan plan) {
        return "Turn the order of the column leads at the controller round, or accept the board as wired: `buzzout learn"
                + " LOG --accept` writes that plan.";
    }
}
