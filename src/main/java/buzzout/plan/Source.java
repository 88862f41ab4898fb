package buzzout.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The file's own characters, to find where in a text value a word stands. */
final class Source {
    private final List<String> lines;

    Source(String text) {
        lines = List.of(text.split("\n", -1));
    }

    /** A text value whose literal begins at a spot. */
    Text text(String value, Spot at) {
        int points = value.codePointCount(0, value.length());
        List<Spot> spots = spotsWithin(at);
        return new Text(value, spots.size() == points ? spots : Collections.nCopies(points, at), at);
    }

    /** The spots of a one-line literal's code points, each escape counting as one; empty for other literals. */
    private List<Spot> spotsWithin(Spot at) {
        int[] line = lines.get(at.line() - 1).codePoints().toArray();
        int open = at.column() - 1;
        if (open >= line.length || (line[open] != '"' && line[open] != '\'')) {
            return List.of();
        }
        List<Spot> spots = new ArrayList<>();
        int i = open + 1;
        while (i < line.length && line[i] != line[open]) {
            spots.add(new Spot(at.line(), i + 1));
            i += line[open] == '"' && line[i] == '\\' && i + 1 < line.length ? escapeLength(line[i + 1]) : 1;
        }
        return spots;
    }

    private static int escapeLength(int letter) {
        return switch (letter) {
            case 'x' -> 4;
            case 'u' -> 6;
            case 'U' -> 10;
            default -> 2;
        };
    }
}
