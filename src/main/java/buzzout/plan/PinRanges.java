package buzzout.plan;

import java.util.ArrayList;
import java.util.List;

/** Pins in few words, such as {@code B0-B7, E2, E6}. */
final class PinRanges {
    private PinRanges() {}

    static String of(List<String> pins) {
        List<String> ranges = new ArrayList<>();
        for (int start = 0, end; start < pins.size(); start = end) {
            end = start + 1;
            while (end < pins.size() && follows(pins.get(end - 1), pins.get(end))) {
                end++;
            }
            String first = pins.get(start);
            ranges.add(end == start + 1 ? first : first + "-" + pins.get(end - 1));
        }
        return String.join(", ", ranges);
    }

    private static boolean follows(String pin, String next) {
        String port = pin.replaceAll("[0-9]+$", "");
        return next.equals(port + (Integer.parseInt(pin.substring(port.length())) + 1));
    }
}
