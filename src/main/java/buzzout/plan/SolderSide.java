package buzzout.plan;

import java.util.Comparator;
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
        boolean row = net.kind() == NetKind.ROW;
        Comparator<Key> along = row
                ? Comparator.comparingDouble((Key key) -> -key.place().middle())
                : Comparator.comparingDouble(key -> key.place().y());
        List<Integer> seen = net.joints().stream()
                .map(plan.keys()::get)
                .sorted(along)
                .map(Key::index)
                .toList();
        return ordinal(seen.indexOf(net.joints().get(joint)) + 1) + " joint from the " + (row ? "left" : "top");
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
