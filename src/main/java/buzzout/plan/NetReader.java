package buzzout.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads one net: its chain, branches, jumpers, lead, pin and colour. */
final class NetReader {
    private final String name;
    private final NetKind kind;
    private final Settings settings;
    private final Problems problems;
    private final Map<String, Integer> jointOf = new LinkedHashMap<>();
    private final List<Word> joints = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();

    private NetReader(String name, NetKind kind, Settings settings, Problems problems) {
        this.name = name;
        this.kind = kind;
        this.settings = settings;
        this.problems = problems;
    }

    static NetDraft read(String name, NetKind kind, Settings settings, Problems problems) {
        return new NetReader(
                        name, kind, settings.known("pin", "keys", "lead", "colour", "jumpers", "branches"), problems)
                .read();
    }

    private NetDraft read() {
        readChain();
        settings.texts("branches").forEach(this::readBranch);
        settings.texts("jumpers").forEach(this::readJumper);
        if (!settings.has("pin")) {
            problems.error(settings.at(), kind.word() + " " + name + " has no pin; add one, such as pin = \"D0\"");
        }
        return new NetDraft(
                name,
                kind,
                settings.at(),
                settings.text("pin").map(Text::whole),
                joints,
                links,
                readLead(),
                readColour());
    }

    private void readChain() {
        List<Text> texts = settings.texts("keys");
        int before = -1;
        for (Text text : texts) {
            for (Word key : text.words()) {
                before = solder(key, before);
            }
        }
        if (joints.isEmpty()) {
            problems.lack(
                    settings.at("keys"),
                    kind.word() + " " + name + " has no keys; list them in solder order, such as keys = \"Q W E\"");
        }
    }

    private void readBranch(Text branch) {
        List<Word> words = branch.words();
        if (words.size() < 2) {
            problems.error(
                    branch.at(),
                    "branch " + branch.whole().quoted() + " of " + name + " needs two keys or more: one on " + name
                            + " that it starts at, then its own");
            return;
        }
        Integer from = jointOf.get(words.get(0).text());
        if (from == null) {
            problems.lack(
                    words.get(0).at(),
                    "a branch of " + name + " starts at " + words.get(0).quoted()
                            + ", which is not on it; start at a key that is");
            from = -1;
        }
        int before = from;
        for (Word key : words.subList(1, words.size())) {
            before = solder(key, before);
        }
    }

    /** Adds a joint after another, or after none when that is negative. */
    private int solder(Word key, int before) {
        Optional<String> fault = KeyName.fault(key.text());
        fault.ifPresent(why -> problems.error(key.at(), "key name " + key.quoted() + " " + why));
        Integer already = jointOf.get(key.text());
        if (already != null) {
            problems.error(key.at(), "key " + key.quoted() + " is twice on " + name + "; take one out");
            return already;
        }
        int joint = joints.size();
        joints.add(key);
        jointOf.put(key.text(), joint);
        if (before >= 0) {
            links.add(new Link(before, joint, false));
        }
        return joint;
    }

    private void readJumper(Text jumper) {
        List<Word> ends = jumper.words();
        if (ends.size() != 2) {
            problems.error(
                    jumper.at(),
                    "jumper " + jumper.whole().quoted() + " of " + name
                            + " must name two keys, such as jumpers = [\"Q W\"]");
            return;
        }
        OptionalInt joint = jointAt(ends.get(0), "a jumper");
        OptionalInt other = jointAt(ends.get(1), "a jumper");
        if (joint.isPresent() && other.isPresent() && !bridge(joint.getAsInt(), other.getAsInt())) {
            problems.error(
                    jumper.at(),
                    "jumper " + jumper.whole().quoted() + " of " + name
                            + " joins keys that do not follow each other; name two that do");
        }
    }

    /** Marks the link between two joints as a jumper; false when there is none. */
    private boolean bridge(int joint, int other) {
        for (int i = 0; i < links.size(); i++) {
            Link link = links.get(i);
            if (link.from() == Math.min(joint, other) && link.to() == Math.max(joint, other)) {
                links.set(i, new Link(link.from(), link.to(), true));
                return true;
            }
        }
        return false;
    }

    private int readLead() {
        return settings.text("lead")
                .map(lead -> jointAt(lead.whole(), "the lead"))
                .orElse(OptionalInt.empty())
                .orElse(0);
    }

    /** The joint of a key; tells of a key that is not on this net. */
    private OptionalInt jointAt(Word key, String what) {
        Integer joint = jointOf.get(key.text());
        if (joint == null) {
            problems.lack(
                    key.at(),
                    what + " of " + name + " is at " + key.quoted() + ", which is not on it; "
                            + problems.hint(key.text(), jointOf.keySet(), "name a key that is"));
            return OptionalInt.empty();
        }
        return OptionalInt.of(joint);
    }

    private Optional<String> readColour() {
        return settings.text("colour").map(Text::whole).flatMap(colour -> {
            Optional<String> fault = KeyName.fault(colour.text().replace(" ", ""));
            fault.ifPresent(
                    why -> problems.error(colour.at(), "colour " + colour.quoted() + " of " + name + " " + why));
            return fault.isPresent() ? Optional.empty() : Optional.of(colour.text());
        });
    }
}
