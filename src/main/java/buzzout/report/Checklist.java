package buzzout.report;

import java.util.List;

/** What to solder in which order, with a box to tick for each joint. */
record Checklist(List<Section> sections) {
    /** @param says for the whole section, before its first step */
    record Section(String title, List<String> says, List<Step> steps) {
        Section {
            says = List.copyOf(says);
            steps = List.copyOf(steps);
        }
    }

    /**
     * A piece of work, such as one row.
     *
     * @param boxes one for each thing that is then done
     */
    record Step(String title, String says, List<String> boxes) {
        Step {
            boxes = List.copyOf(boxes);
        }
    }

    Checklist {
        sections = List.copyOf(sections);
    }
}
