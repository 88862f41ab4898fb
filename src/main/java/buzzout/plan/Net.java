package buzzout.plan;

import java.util.List;
import java.util.Optional;

/**
 * A row or a column: a chain of joints in solder order, or a tree when it branches.
 *
 * @param name such as {@code R2} or {@code C4}
 * @param pin the controller pin of its lead, as the data sheet names it
 * @param joints the key at each joint, as indices into the plan's keys; one joint for each key
 * @param links one fewer than the joints, and together they reach all of them
 * @param leadJoint the joint that the lead is soldered to, as an index into {@code joints}
 * @param colour the wire's colour, a plain word, where the plan says one
 */
public record Net(
        String name,
        NetKind kind,
        String pin,
        List<Integer> joints,
        List<Link> links,
        int leadJoint,
        Optional<String> colour) {
    public Net {
        joints = List.copyOf(joints);
        links = List.copyOf(links);
    }

    /** The joint of a key on this net. */
    public int jointOf(int key) {
        int joint = joints.indexOf(key);
        if (joint < 0) {
            throw new IllegalArgumentException("key " + key + " is not on " + name);
        }
        return joint;
    }

    /** A joint's number, such as {@code R2.3} for the third in solder order. */
    public String number(int joint) {
        return name + '.' + (joint + 1);
    }

    /** The joint at an index into {@code joints}. */
    public Joint joint(int index) {
        return new Joint(joints.get(index), kind);
    }
}
