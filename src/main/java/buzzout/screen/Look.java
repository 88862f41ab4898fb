package buzzout.screen;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What the terminal may be sent.
 *
 * @param colour whether the sixteen plain colours may be used; bold and reverse always are
 * @param ascii whether only printable ASCII may be used
 */
public record Look(boolean colour, boolean ascii) {
    /** The look that the environment allows, narrowed by what the person asked for. */
    public static Look from(Map<String, String> environment, boolean noColour, boolean ascii) {
        boolean plain = noColour || !environment.getOrDefault("NO_COLOR", "").isEmpty();
        return new Look(!plain, ascii || !showsSymbols(environment));
    }

    /** The look of a window of our own, which has every mark and every colour. */
    public static Look inWindow(Map<String, String> environment, boolean noColour, boolean ascii) {
        return new Look(from(environment, noColour, ascii).colour(), ascii);
    }

    /** The Linux console's fonts lack the marks, and other locales than UTF-8 lack them altogether. */
    private static boolean showsSymbols(Map<String, String> environment) {
        String locale = Stream.of("LC_ALL", "LC_CTYPE", "LANG")
                .map(name -> environment.getOrDefault(name, ""))
                .filter(value -> !value.isEmpty())
                .findFirst()
                .orElse("")
                .toLowerCase(Locale.ROOT);
        return (locale.endsWith("utf-8") || locale.endsWith("utf8")) && !"linux".equals(environment.get("TERM"));
    }
}
