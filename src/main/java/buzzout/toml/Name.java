package buzzout.toml;

/** A part of what names a setting. */
record Name(String text, Spot at) {}
