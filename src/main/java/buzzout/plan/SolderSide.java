package buzzout.plan;

import java.util.List;

/** Places in words, as seen from the solder side, where left and right are mirrored. */
public final class SolderSide {
    private static final List<String> ORDINALS =
            List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth");

    private SolderSide() {}

    /** Such as {@code Q and W}: the keys that a link lies between. */
    public static String between(Plan plan, Net net, Link link) {
        return keyAt(plan, net, link.from()).spoken() + " and "
                + keyAt(plan, net, link.to()).spoken();
    }

    /** Such as {@code third joint from the left}, or from the top for a column. */
    public static String joint(Plan plan, Net net, int joint) {
        double here = along(plan, net, joint);
        int before = 0;
        for (int other = 0; other < net.joints().size(); other++) {
            double there = along(plan, net, other);
            before += there < here || (there == here && other < joint) ? 1 : 0;
        }
        return ordinal(before + 1) + " joint from the " + (net.kind() == NetKind.ROW ? "left" : "top");
    }

    /** How far a joint lies to the right or down, seen from behind. */
    private static double along(Plan plan, Net net, int joint) {
        Place place = keyAt(plan, net, joint).place();
        return net.kind() == NetKind.ROW ? -place.middle() : place.y();
    }

    /** The same after its number, such as {@code R2.8, third joint from the left}. */
    public static String numbered(Plan plan, Net net, int joint) {
        return net.number(joint) + ", " + joint(plan, net, joint);
    }

    public static Key keyAt(Plan plan, Net net, int joint) {
        return plan.keys().get(net.joints().get(joint));
    }

    static String ordinal(int number) {
        if (number <= ORDINALS.size()) {
            return ORDINALS.get(number - 1);
        }
        int teen = number % 100;
        String ending = teen >= 11 && teen <= 13
                ? "th"
                : switch (number % 10) {
                    case 1 -> "st";
                    case 2 -> "nd";
                    case 3 -> "rd";
                    default -> "th";
                };
        return number + ending;
    }
}
