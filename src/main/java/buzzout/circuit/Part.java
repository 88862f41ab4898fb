package buzzout.circuit;

import buzzout.plan.Joint;
import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A part of the board that at most one supposed fault can spoil. */
public sealed interface Part {
    /** More than any index of a key, a net or a link: there are at most as many keys as pairs of 63 pins. */
    long PLACES = 4099;

    /** The numbered joints that it is soldered at, in the plan's order of nets; none for the board as a whole. */
    List<Joint> joints(Plan plan);

    /**
     * A number that no other part of a board has. Tables go by it: a record's own hash code is put together when it is
     * first asked for, and those of all kinds of part were a tenth of the time to the first frame.
     */
    long number();

    private static long number(int kind, int... places) {
        long number = kind;
        for (int place : places) {
            number = number * PLACES + place;
        }
        return number;
    }

    /** The numbers of all joints of some parts, rows first, such as {@code R2.3 and C4.2}. */
    static String numbers(Plan plan, Collection<Part> parts) {
        List<String> numbers = new ArrayList<>();
        for (Joint joint : joints(plan, parts)) {
            numbers.add(joint.number(plan));
        }
        int last = numbers.size() - 1;
        return last < 1
                ? String.join("", numbers)
                : String.join(", ", numbers.subList(0, last)) + " and " + numbers.get(last);
    }

    /** The joints of some parts, each once, net by net in solder order. */
    static List<Joint> joints(Plan plan, Collection<Part> parts) {
        Set<Joint> theirs = new HashSet<>();
        for (Part part : parts) {
            theirs.addAll(part.joints(plan));
        }
        List<Joint> inOrder = new ArrayList<>();
        for (Net net : plan.nets()) {
            for (int at = 0; at < net.joints().size(); at++) {
                if (theirs.contains(net.joint(at))) {
                    inOrder.add(net.joint(at));
                }
            }
        }
        return inOrder;
    }

    record LinkPart(int net, int link) implements Part {
        @Override
        public long number() {
            return Part.number(1, net, link);
        }

        @Override
        public List<Joint> joints(Plan plan) {
            Net on = plan.nets().get(net);
            Link at = on.links().get(link);
            return List.of(on.joint(at.from()), on.joint(at.to()));
        }
    }

    record LeadPart(int net) implements Part {
        @Override
        public long number() {
            return Part.number(2, net);
        }

        @Override
        public List<Joint> joints(Plan plan) {
            return List.of(plan.nets().get(net).joint(plan.nets().get(net).leadJoint()));
        }
    }

    record PinPart(int net) implements Part {
        @Override
        public long number() {
            return Part.number(3, net);
        }

        @Override
        public List<Joint> joints(Plan plan) {
            return new LeadPart(net).joints(plan);
        }
    }

    record SwitchPart(int key) implements Part {
        @Override
        public long number() {
            return Part.number(4, key);
        }

        @Override
        public List<Joint> joints(Plan plan) {
            return List.of(new Joint(key, plan.diodes().other()));
        }
    }

    record DiodePart(int key) implements Part {
        @Override
        public long number() {
            return Part.number(5, key);
        }

        @Override
        public List<Joint> joints(Plan plan) {
            return List.of(new Joint(key, plan.diodes()));
        }
    }

    record EndPart(int key, NetKind kind) implements Part {
        @Override
        public long number() {
            return Part.number(kind == NetKind.ROW ? 6 : 7, key);
        }

        @Override
        public List<Joint> joints(Plan plan) {
            return List.of(new Joint(key, kind));
        }
    }

    record GapPart(int net, int joint, int otherNet, int otherJoint) implements Part {
        @Override
        public long number() {
            return Part.number(8, net, joint, otherNet, otherJoint);
        }

        @Override
        public List<Joint> joints(Plan plan) {
            return List.of(
                    new Joint(joint, plan.nets().get(net).kind()),
                    new Joint(otherJoint, plan.nets().get(otherNet).kind()));
        }
    }

    /** The board as a whole. */
    enum Whole implements Part {
        SIDES,
        STRIPES;

        @Override
        public long number() {
            return Part.number(this == SIDES ? 9 : 10);
        }

        @Override
        public List<Joint> joints(Plan plan) {
            return List.of();
        }
    }
}
