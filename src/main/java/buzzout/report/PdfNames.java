package buzzout.report;

import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.List;
import java.util.stream.Stream;

/** A plan's names in the letters that PDF's standard faces have; another stands as its code point, such as U+2192. */
final class PdfNames {
    private PdfNames() {}

    /** The names that would look different. */
    static List<String> changed(Plan plan) {
        return Stream.of(
                        Stream.of(plan.name()),
                        plan.keys().stream().map(Key::name),
                        plan.nets().stream().map(Net::name),
                        plan.nets().stream().flatMap(net -> net.colour().stream()))
                .flatMap(names -> names)
                .filter(name -> !shown(name).equals(name))
                .distinct()
                .toList();
    }

    static Plan shown(Plan plan) {
        return new Plan(
                shown(plan.name()),
                plan.controller(),
                plan.stripe(),
                plan.diodes(),
                plan.nets().stream().map(PdfNames::shown).toList(),
                plan.keys().stream()
                        .map(key -> new Key(key.index(), shown(key.name()), key.row(), key.column(), key.place()))
                        .toList(),
                plan.sparePin(),
                plan.bounceLimitMillis());
    }

    private static Net shown(Net net) {
        return new Net(
                shown(net.name()),
                net.kind(),
                net.pin(),
                net.joints(),
                net.links(),
                net.leadJoint(),
                net.colour().map(PdfNames::shown));
    }

    private static String shown(String name) {
        StringBuilder shown = new StringBuilder();
        name.codePoints().forEach(point -> {
            String letter = Character.toString(point);
            shown.append(PdfDrawing.LETTERS.newEncoder().canEncode(letter) ? letter : String.format("U+%04X", point));
        });
        return shown.toString();
    }
}
