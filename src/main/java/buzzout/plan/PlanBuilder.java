package buzzout.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Turns names into indices, once everything has been checked. */
final class PlanBuilder {
    private PlanBuilder() {}

    /** @param places in reading order */
    static Plan plan(Heading heading, List<NetDraft> drafts, Map<String, Place> places, Map<String, Double> priors) {
        List<Key> keys = keys(drafts, places);
        return new Plan(
                heading.name(),
                heading.controller().orElseThrow(),
                heading.stripe(),
                heading.diodes(),
                nets(drafts, keys),
                keys,
                heading.spare().map(Word::text),
                heading.bounceLimitMillis(),
                priors);
    }

    private static List<Key> keys(List<NetDraft> nets, Map<String, Place> places) {
        Map<String, Integer> rows = netOf(nets, NetKind.ROW);
        Map<String, Integer> columns = netOf(nets, NetKind.COLUMN);
        List<Key> keys = new ArrayList<>();
        places.forEach((name, place) ->
                keys.add(new Key(keys.size(), name, indexOf(rows, name), indexOf(columns, name), place)));
        return keys;
    }

    private static List<Net> nets(List<NetDraft> drafts, List<Key> keys) {
        Map<String, Integer> keyOf = new HashMap<>();
        keys.forEach(key -> keyOf.put(key.name(), key.index()));
        List<Net> nets = new ArrayList<>();
        for (NetDraft draft : drafts) {
            List<Integer> joints = new ArrayList<>();
            draft.joints().forEach(joint -> joints.add(indexOf(keyOf, joint.text())));
            nets.add(new Net(
                    draft.name(),
                    draft.kind(),
                    draft.pin().orElseThrow().text(),
                    joints,
                    draft.links(),
                    draft.leadJoint(),
                    draft.colour()));
        }
        return nets;
    }

    private static Map<String, Integer> netOf(List<NetDraft> nets, NetKind kind) {
        Map<String, Integer> netOf = new HashMap<>();
        for (int i = 0; i < nets.size(); i++) {
            if (nets.get(i).kind() == kind) {
                for (Word joint : nets.get(i).joints()) {
                    netOf.put(joint.text(), i);
                }
            }
        }
        return netOf;
    }

    private static int indexOf(Map<String, Integer> indices, String name) {
        Integer index = indices.get(name);
        if (index == null) {
            throw new IllegalStateException("key " + name + " passed the checks without a place");
        }
        return index;
    }
}
