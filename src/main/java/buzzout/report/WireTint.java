package buzzout.report;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** How a wire's colour, a plain word, is drawn. Names stand beside the wires too, because no colour is seen by all. */
final class WireTint {
    private static final Tint UNKNOWN = new Tint(0xD5D9DD);

    private static final Map<String, Tint> KNOWN = Map.ofEntries(
            Map.entry("black", new Tint(0x3A3A3A)),
            Map.entry("brown", new Tint(0x8A5A2B)),
            Map.entry("red", new Tint(0xD62F2F)),
            Map.entry("orange", new Tint(0xF08A1D)),
            Map.entry("yellow", new Tint(0xF7D117)),
            Map.entry("green", new Tint(0x2E9E4A)),
            Map.entry("blue", new Tint(0x2B66C4)),
            Map.entry("violet", new Tint(0x8446B0)),
            Map.entry("purple", new Tint(0x8446B0)),
            Map.entry("grey", new Tint(0x9A9A9A)),
            Map.entry("gray", new Tint(0x9A9A9A)),
            Map.entry("white", new Tint(0xFFFFFF)),
            Map.entry("pink", new Tint(0xF5A3BE)),
            Map.entry("turquoise", new Tint(0x35C0BE)));

    private WireTint() {}

    /** A pale one for a wire without a colour, or of one that is not known here. */
    static Tint of(Optional<String> colour) {
        return colour.map(word -> KNOWN.getOrDefault(word.toLowerCase(Locale.ROOT), UNKNOWN))
                .orElse(UNKNOWN);
    }
}
