package buzzout.circuit;

import buzzout.plan.NetKind;

/** A part of the board that at most one supposed fault can spoil. */
public sealed interface Part {
    record LinkPart(int net, int link) implements Part {}

    record LeadPart(int net) implements Part {}

    record PinPart(int net) implements Part {}

    record SwitchPart(int key) implements Part {}

    record DiodePart(int key) implements Part {}

    record EndPart(int key, NetKind kind) implements Part {}

    record GapPart(int net, int joint, int otherNet, int otherJoint) implements Part {}

    /** The board as a whole. */
    enum Whole implements Part {
        SIDES,
        STRIPES
    }
}
