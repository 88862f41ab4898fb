package buzzout.plan;

import buzzout.toml.Slip;
import buzzout.toml.Spot;
import buzzout.toml.Toml;
import java.util.List;
import java.util.Optional;

/** The settings of a file, and the places where it is not TOML. */
final class TomlText {
    /** One slip can spoil every line after it, and a file that is no text at all spoils them all. */
    private static final int MOST_SLIPS = 20;

    private TomlText() {}

    /** The file's settings; empty when what was read of it would only mislead. */
    static Optional<Settings> parse(String text, Problems problems) {
        if (!Bounds.hold(text, problems)) {
            return Optional.empty();
        }
        // Some editors begin a file with a byte order mark.
        Toml.File file = Toml.read(text.startsWith("\ufeff") ? text.substring(1) : text);
        List<Slip> slips = file.slips();
        for (Slip slip : slips.subList(0, Math.min(slips.size(), MOST_SLIPS))) {
            problems.unread(slip.at(), Visible.of(slip.message()));
        }
        if (slips.size() > MOST_SLIPS) {
            problems.error(
                    slips.get(MOST_SLIPS).at(),
                    (slips.size() - MOST_SLIPS) + " more places are not TOML; mend the ones named and check again");
        }
        return file.whole() ? Optional.of(new Settings(file.settings(), Spot.START, "", problems)) : Optional.empty();
    }
}
