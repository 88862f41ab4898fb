package buzzout.toml;

/**
 * Where a text is not TOML, or says something twice.
 *
 * @param message what is there and what to do about it; may hold characters that do not print
 */
public record Slip(Spot at, String message) {}
