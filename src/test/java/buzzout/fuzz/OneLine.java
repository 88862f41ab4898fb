package buzzout.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

/** A text that a terminal shows and does not obey. */
public final class OneLine {
    private OneLine() {}

    /** Fails where the text holds control characters, line breaks, or characters that turn the reading direction. */
    public static void check(String text) {
        assertTrue(
                text.codePoints()
                        .noneMatch(each -> Character.isISOControl(each)
                                || Character.getType(each) == Character.FORMAT
                                || Character.getType(each) == Character.LINE_SEPARATOR
                                || Character.getType(each) == Character.PARAGRAPH_SEPARATOR),
                () -> "not harmless: " + text.replaceAll("[^ -~]", "?"));
    }
}
