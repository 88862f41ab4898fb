package buzzout.plan;

import java.util.List;
import java.util.Optional;

/** What the file says about the board as a whole, above its nets. */
record Heading(
        String name,
        Optional<Controller> controller,
        NetKind stripe,
        NetKind diodes,
        Optional<Word> spare,
        double bounceLimitMillis) {
    private static final int LONGEST_NAME = 60;

    /** A healthy switch settles well within it: 6.2 ms was the longest of sixteen (J. Ganssle, as quoted). */
    private static final double USUAL_BOUNCE_LIMIT_MILLIS = 10;

    private static final double LONGEST_BOUNCE_LIMIT_MILLIS = 1000;

    static Heading read(Settings file, Problems problems) {
        return new Heading(
                name(file, problems),
                controller(file, problems),
                kind(file, "stripe", "row", "column", problems),
                kind(file, "diodes", "rows", "columns", problems),
                file.text("spare").map(Text::whole),
                bounceLimit(file, problems));
    }

    private static String name(Settings file, Problems problems) {
        if (!file.has("name")) {
            problems.lack(file.at(), "the plan has no name; add one at the top, such as name = \"Quayside 46\"");
        }
        Optional<Word> name = file.text("name").map(Text::whole);
        name.flatMap(word -> fault(word.text()))
                .ifPresent(why -> problems.error(file.at("name"), "the plan's name " + why));
        return name.map(Word::text).orElse("");
    }

    private static Optional<String> fault(String name) {
        if (name.isBlank()) {
            return Optional.of("is empty; give it one, such as name = \"Quayside 46\"");
        }
        if (name.codePointCount(0, name.length()) > LONGEST_NAME) {
            return Optional.of("is longer than " + LONGEST_NAME + " characters; shorten it");
        }
        if (!Visible.prints(name.replace(" ", ""))) {
            return Optional.of(Visible.quoted(name) + " has a character that does not print; take it out");
        }
        return Optional.empty();
    }

    private static Optional<Controller> controller(Settings file, Problems problems) {
        if (!file.has("controller")) {
            problems.lack(
                    file.at(), "the plan has no controller; add one of " + String.join(", ", Controllers.names()));
        }
        Optional<Word> name = file.text("controller").map(Text::whole);
        Optional<Controller> controller = name.map(Word::text).flatMap(Controllers::named);
        if (name.isPresent() && controller.isEmpty()) {
            problems.error(
                    name.get().at(),
                    "controller " + name.get().quoted() + " is not known; use one of "
                            + String.join(", ", Controllers.names()));
        }
        return controller;
    }

    private static NetKind kind(Settings file, String setting, String row, String column, Problems problems) {
        Optional<Word> word = file.text(setting).map(Text::whole);
        if (word.isPresent() && !List.of(row, column).contains(word.get().text())) {
            problems.error(
                    word.get().at(),
                    setting + " is " + word.get().quoted() + "; make it \"" + row + "\" or \"" + column + "\"");
        }
        return word.filter(is -> is.text().equals(column)).isPresent() ? NetKind.COLUMN : NetKind.ROW;
    }

    private static double bounceLimit(Settings file, Problems problems) {
        double limit = file.number("bounce_limit_ms").orElse(USUAL_BOUNCE_LIMIT_MILLIS);
        // Asked the other way round, a not-a-number would pass.
        if (!(limit > 0 && limit <= LONGEST_BOUNCE_LIMIT_MILLIS)) {
            problems.error(
                    file.at("bounce_limit_ms"), "bounce_limit_ms must be more than 0 and at most 1000 milliseconds");
        }
        return limit;
    }
}
