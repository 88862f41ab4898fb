package buzzout.plan;

/**
 * The piece of wire or diode leg between two joints of a net.
 *
 * @param from index of the joint nearer the start of the chain, into the net's joints
 * @param to index of the joint soldered after it
 * @param jumper whether it bridges a gap, such as the two halves of a plate
 */
public record Link(int from, int to, boolean jumper) {}
