package buzzout.screen;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What the terminal may be sent.
 *
 * @param colour whether the sixteen plain colours may be used; bold and reverse always are
 * @param ascii whether only printable ASCII may be used
 */
public record Look(boolean colour, boolean ascii) {
    /** The first of these that is set tells the locale. */
    private static final List<String> LOCALES = List.of("LC_ALL", "LC_CTYPE", "LANG");

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
        String locale = locale(environment).toLowerCase(Locale.ROOT);
        return (locale.endsWith("utf-8") || locale.endsWith("utf8")) && !"linux".equals(environment.get("TERM"));
    }

    private static String locale(Map<String, String> environment) {
        for (String name : LOCALES) {
            String locale = environment.getOrDefault(name, "");
            if (!locale.isEmpty()) {
                return locale;
            }
        }
        return "";
    }
}
