package buzzout.plan;

import buzzout.toml.Spot;
import java.util.List;
import java.util.Optional;

/** A net as the file says it, its keys still names. */
record NetDraft(
        String name,
        NetKind kind,
        Spot at,
        Optional<Word> pin,
        List<Word> joints,
        List<Link> links,
        int leadJoint,
        Optional<String> colour) {
    NetDraft {
        joints = List.copyOf(joints);
        links = List.copyOf(links);
    }

    boolean has(String key) {
        return joints.stream().anyMatch(joint -> joint.text().equals(key));
    }
}
