package buzzout.plan;

import buzzout.toml.Spot;

/** A name as it stands in the file. */
record Word(String text, Spot at) {
    String quoted() {
        return Visible.quoted(text);
    }
}
