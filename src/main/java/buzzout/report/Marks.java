package buzzout.report;

import buzzout.plan.Joint;
import java.util.Map;

/**
 * What is pointed out on a picture of a board.
 *
 * @param keys by index into the plan's keys
 * @param joints a short label for a ring around a joint, such as a finding's number
 */
public record Marks(Map<Integer, KeyMark> keys, Map<Joint, String> joints) {
    public static final Marks NONE = new Marks(Map.of(), Map.of());

    /**
     * What is said of one key.
     *
     * @param mark a character or two in the key's corner, such as a key state's mark
     * @param stands whether the key stands out by a heavy frame
     */
    public record KeyMark(String mark, boolean stands) {}

    public Marks {
        keys = Map.copyOf(keys);
        joints = Map.copyOf(joints);
    }
}
